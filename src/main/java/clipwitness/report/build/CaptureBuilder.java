package clipwitness.report.build;

import clipwitness.compare.result.CaptureResult;
import clipwitness.job.CaptureRow;
import clipwitness.quantity.Unit;
import clipwitness.report.model.ListedCapture;
import clipwitness.report.words.JobWording;

/** Captures with all that was read of them. */
final class CaptureBuilder {
    private final JobWording wording;
    private final DoubtBuilder doubts;
    private final CapturePlaces places;
    private final KeptRecordings kept;

    CaptureBuilder(JobWording wording) {
        this.wording = wording;
        this.doubts = new DoubtBuilder(wording);
        this.places = new CapturePlaces(wording);
        this.kept = new KeptRecordings(wording);
    }

    ListedCapture of(CaptureResult capture) {
        CaptureRow row = capture.row();
        return new ListedCapture(
                Integer.toString(row.row()),
                row.file(),
                row.inputFile().orElse(""),
                places.name(row),
                places.condition(row),
                Integer.toString(row.run()),
                Integer.toString(capture.export().samples()),
                capture.export().sampleRate().isPresent()
                        ? wording.numbers()
                                .nominal(capture.export().sampleRate().getAsDouble(), Unit.HERTZ)
                        : "",
                String.join(", ", capture.export().channels()),
                capture.export().sha256(),
                capture.export().inputSha256().orElse(""),
                capture.export().evidence().stream().map(wording.speech()::text).toList(),
                capture.listening().map(kept::listed).orElse(""),
                row.note(),
                doubts.of(capture));
    }
}
