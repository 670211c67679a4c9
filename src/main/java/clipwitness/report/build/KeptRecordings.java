package clipwitness.report.build;

import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.JobResults;
import clipwitness.job.CaptureRow;
import clipwitness.measure.ListeningFigure;
import clipwitness.measure.ListeningResult;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import clipwitness.report.words.JobWording;
import java.util.List;
import java.util.Optional;

/** Recordings of playing: what they are, and that they are kept as evidence, neither compared nor judged. */
final class KeptRecordings {
    private static final int DIGITS_OF_LENGTH = 3;
    private static final int DECIMALS_OF_LEVEL = 1;

    private final JobWording wording;

    KeptRecordings(JobWording wording) {
        this.wording = wording;
    }

    /** How many there are and of which states; empty where there is none. */
    String of(JobResults results) {
        List<CaptureRow> rows = results.captures().stream()
                .filter(c -> c.listening().isPresent())
                .map(CaptureResult::row)
                .toList();
        List<String> states = rows.stream()
                .flatMap(r -> r.state().stream())
                .distinct()
                .map(wording::called)
                .toList();
        return switch (rows.size()) {
            case 0 -> "";
            case 1 -> wording.say("kept.one", "states", wording.list(states));
            default -> wording.say("kept.all", "count", Integer.toString(rows.size()), "states", wording.list(states));
        };
    }

    /** Length and level of one, for the list of captures. */
    String listed(ListeningResult recording) {
        return wording.say(
                "kept.listed",
                "lasts",
                wording.numbers().rounded(recording.lasts(), Unit.SECOND, DIGITS_OF_LENGTH),
                "rms",
                figure(recording, ListeningFigure.RMS),
                "peak",
                figure(recording, ListeningFigure.PEAK),
                "rmsLevel",
                level(recording, ListeningFigure.RMS_LEVEL),
                "peakLevel",
                level(recording, ListeningFigure.PEAK_LEVEL));
    }

    private String figure(ListeningResult recording, ListeningFigure figure) {
        return found(recording, figure).map(m -> wording.amount(m).full()).orElse("");
    }

    private String level(ListeningResult recording, ListeningFigure figure) {
        return found(recording, figure)
                .map(m -> wording.amount(m, DECIMALS_OF_LEVEL).full())
                .orElse("");
    }

    private static Optional<Measured> found(ListeningResult recording, ListeningFigure figure) {
        return Optional.ofNullable(recording.values().get(figure));
    }
}
