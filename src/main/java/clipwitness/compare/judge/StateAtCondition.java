package clipwitness.compare.judge;

import clipwitness.capture.Condition;
import clipwitness.compare.result.CaptureResult;
import clipwitness.measure.Harmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.pair.HarmonicAtEqualLevel;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Word;
import java.util.List;
import java.util.Optional;

/**
 * One state under one condition: its waveform captures, replicates together.
 *
 * @param state      state
 * @param label      the state's label, for sentences
 * @param condition  condition
 * @param replicates captures, at least one
 */
public record StateAtCondition(String state, String label, Condition condition, List<CaptureResult> replicates) {
    public StateAtCondition {
        replicates = List.copyOf(replicates);
        if (replicates.isEmpty()) {
            throw new IllegalArgumentException("a setting needs a capture");
        }
    }

    /** The figure, averaged over the replicates that have it; else the first refusal. */
    public Measured figure(WaveformQuantity quantity) {
        return Replicates.mean(
                replicates.stream().map(r -> waveform(r).get(quantity)).toList());
    }

    /** The figure in the unit of an item, averaged likewise. */
    public Measured figure(ItemValue figure) {
        return Replicates.mean(
                replicates.stream().map(r -> figure.of(waveform(r))).toList());
    }

    /** A harmonic over the rms, averaged likewise. */
    Measured levelMatched(int order) {
        return Replicates.mean(replicates.stream()
                .map(r -> HarmonicAtEqualLevel.of(waveform(r), order))
                .toList());
    }

    /** Level of a harmonic over the fundamental, averaged likewise; refused where there is no such harmonic. */
    Measured harmonic(int order) {
        return Replicates.mean(replicates.stream()
                .map(r -> waveform(r).harmonics().stream()
                        .filter(h -> h.order() == order)
                        .findFirst()
                        .map(Harmonic::level)
                        .orElse(Measured.refused(
                                Unit.DBC,
                                Reason.of(
                                        FigureReason.HARMONIC_NOT_MEASURED,
                                        Argument.word(Word.HARMONIC, Argument.count(order))))))
                .toList());
    }

    /** Whether every capture says what its values are worth in volts. */
    boolean hasVolts() {
        return replicates.stream().allMatch(CaptureResult::hasVolts);
    }

    /** Whether it distorts so much that its clippers work: it is clearly clipped. */
    public boolean isClipped() {
        return thd().filter(t -> t > CommonPractice.CLEARLY_CLIPPED_PERCENT).isPresent();
    }

    /** Whether a change of its distortion can matter: 1 % or more, or not known. */
    public boolean hasThdToJudge() {
        return thd().filter(t -> t < CommonPractice.LEAST_JUDGED_PERCENT).isEmpty();
    }

    private Optional<Double> thd() {
        return figure(WaveformQuantity.THD).asValue().map(Measured.Value::number);
    }

    /** Whether both settings have the same export. */
    boolean sharesExport(StateAtCondition other) {
        return replicates.stream().anyMatch(c -> other.replicates.stream().anyMatch(c::isOfSameExport));
    }

    /** The same setting with one of its captures alone. */
    public StateAtCondition only(CaptureResult capture) {
        return new StateAtCondition(state, label, condition, List.of(capture));
    }

    /** The label as an argument of a statement. */
    Argument name() {
        return Argument.name(label);
    }

    /** The first capture whose figures were not refused, else the first. */
    public WaveformResult first() {
        return replicates.stream()
                .map(StateAtCondition::waveform)
                .filter(w -> !w.refused())
                .findFirst()
                .orElseGet(() -> waveform(replicates.get(0)));
    }

    /** Number of occasions on which the controls were set. */
    public int runs() {
        return (int) replicates.stream().mapToInt(r -> r.row().run()).distinct().count();
    }

    private static WaveformResult waveform(CaptureResult capture) {
        Optional<WaveformResult> waveform = capture.waveform();
        return waveform.orElseThrow(() -> new IllegalArgumentException("not a waveform capture"));
    }
}
