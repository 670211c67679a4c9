package clipwitness.report.build;

import clipwitness.capture.Condition;
import clipwitness.compare.result.CaptureResult;
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
    private final DoubtBuilder doubts;

    CaptureBuilder(JobWording wording) {
        this.wording = wording;
        this.doubts = new DoubtBuilder(wording);
    }

    ListedCapture of(CaptureResult capture) {
        CaptureRow row = capture.row();
        Cells cells = new Cells(wording);
        return new ListedCapture(
                Integer.toString(row.row()),
                row.file(),
                row.inputFile().orElse(""),
                row.state().map(wording::label).or(row::device).orElse(""),
                condition(row),
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
                capture.waveform().map(w -> values(w, cells)).orElse(List.of()),
                capture.waveform().map(w -> harmonics(w, cells)).orElse(List.of()),
                cells.notes(),
                doubts.of(capture));
    }

    /** The condition; of what is no wave its kind too, and the frequency of a point of the response. */
    private String condition(CaptureRow row) {
        return switch (row.kind()) {
            case WAVEFORM -> wording.condition(row.condition());
            case JUNCTION -> wording.say("kind.junction");
            case NOISE -> wording.say("kind.noise") + ", " + wording.condition(row.condition());
            case RESPONSE -> response(row.condition()) + ", " + wording.condition(row.condition());
        };
    }

    private String response(Condition condition) {
        return condition.frequency().isPresent()
                ? wording.say(
                        "kind.response.at",
                        "frequency",
                        wording.numbers().nominal(condition.frequency().getAsDouble(), Unit.HERTZ))
                : wording.say("kind.response");
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
