package clipwitness.report.model;

import clipwitness.compare.CaptureResult;
import clipwitness.job.CaptureRow;
import clipwitness.measure.Harmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import clipwitness.report.words.Amount;
import clipwitness.report.words.Wording;
import java.util.ArrayList;
import java.util.List;

/** Captures with all that was read and measured. */
final class CaptureBuilder {
    private final Wording wording;
    private final DoubtBuilder doubts;

    CaptureBuilder(Wording wording) {
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
                wording.condition(row.condition()),
                Integer.toString(row.run()),
                Integer.toString(capture.export().samples()),
                capture.export().sampleRate().isPresent()
                        ? wording.numbers()
                                .nominal(capture.export().sampleRate().getAsDouble(), Unit.HERTZ)
                        : "",
                String.join(", ", capture.export().channels()),
                capture.export().sha256(),
                capture.export().inputSha256().orElse(""),
                capture.export().evidence(),
                row.note(),
                capture.waveform().map(w -> values(w, cells)).orElse(List.of()),
                capture.waveform().map(w -> harmonics(w, cells)).orElse(List.of()),
                cells.notes(),
                doubts.of(capture));
    }

    private List<Row> values(WaveformResult wave, Cells cells) {
        List<Row> rows = new ArrayList<>();
        wave.values()
                .forEach(
                        (quantity, measured) -> rows.add(row(wording.say("value." + quantity.key()), measured, cells)));
        return cells.aligned(rows);
    }

    private Row row(String name, Measured measured, Cells cells) {
        Amount amount = wording.amount(measured);
        return new Row(name, amount.unit(), List.of(cells.cell(amount)), "");
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
