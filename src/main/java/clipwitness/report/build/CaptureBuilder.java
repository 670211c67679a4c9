package clipwitness.report.build;

import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.JobResults;
import clipwitness.job.CaptureKind;
import clipwitness.job.CaptureRow;
import clipwitness.measure.Harmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import clipwitness.report.model.Cell;
import clipwitness.report.model.ListedCapture;
import clipwitness.report.model.Row;
import clipwitness.report.words.Amount;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.List;

/** Captures with all that was read and measured. */
final class CaptureBuilder {
    private static final int DECIMALS_OF_FREQUENCY = 3;

    private final JobWording wording;
    private final JobResults results;
    private final DoubtBuilder doubts;
    private final CapturePlaces places;

    CaptureBuilder(JobWording wording, JobResults results) {
        this.wording = wording;
        this.results = results;
        this.doubts = new DoubtBuilder(wording);
        this.places = new CapturePlaces(wording);
    }

    ListedCapture of(CaptureResult capture) {
        CaptureRow row = capture.row();
        Cells cells = new Cells(wording);
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
                row.note(),
                together(row),
                capture.waveform().map(w -> values(w, cells)).orElse(List.of()),
                capture.waveform().map(w -> harmonics(w, cells)).orElse(List.of()),
                cells.notes(),
                doubts.of(capture));
    }

    /** As what the captures of one setting are taken: those of one run as captures of one wave, runs as settings anew. */
    private List<String> together(CaptureRow row) {
        if (row.kind() != CaptureKind.WAVEFORM || row.state().isEmpty()) {
            return List.of();
        }
        List<Integer> runs = results.waves(row.state().get(), row.condition())
                .map(c -> c.row().run())
                .toList();
        List<String> said = new ArrayList<>();
        long alike = runs.stream().filter(r -> r == row.run()).count();
        if (alike > 1) {
            said.add(wording.say("capture.replicates", "count", Long.toString(alike)));
        }
        long anew = runs.stream().distinct().count();
        if (anew > 1) {
            said.add(wording.say("capture.runs", "count", Long.toString(anew)));
        }
        return said;
    }

    private List<Row> values(WaveformResult wave, Cells cells) {
        List<Row> rows = new ArrayList<>();
        wave.values().forEach((quantity, measured) -> {
            Amount amount = amount(quantity, measured);
            rows.add(new Row(wording.say("value." + quantity.key()), amount.unit(), List.of(cells.cell(amount)), ""));
        });
        return cells.aligned(rows);
    }

    /** Frequencies in Hz, so that captures compare at a glance; everything else with the prefix that suits it. */
    private Amount amount(WaveformQuantity quantity, Measured measured) {
        return quantity == WaveformQuantity.FREQUENCY
                ? wording.amount(measured, DECIMALS_OF_FREQUENCY)
                : wording.amount(measured);
    }

    private List<Row> harmonics(WaveformResult wave, Cells cells) {
        return cells.aligned(
                wave.harmonics().stream().map(h -> harmonic(h, cells)).toList());
    }

    private Row harmonic(Harmonic harmonic, Cells cells) {
        Amount level = wording.amount(harmonic.level());
        String phase = harmonic.phase().isPresent()
                ? wording.numbers().nominal(Math.rint(harmonic.phase().getAsDouble()), Unit.DEGREE)
                : "–";
        return new Row(
                Integer.toString(harmonic.order()), level.unit(), List.of(cells.cell(level), Cell.of(phase)), "");
    }
}
