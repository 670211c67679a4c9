package clipwitness.compare.judge;

import clipwitness.compare.result.CaptureResult;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.series.LevelOverDrive;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import clipwitness.reason.Word;
import java.util.Optional;

/**
 * Whether two captures, or a capture and its sheet, were driven alike. Input fundamentals that differ by more than 1 % from capture to
 * capture, or by more than 5 % from the sheet's level, raise a doubt. The level change then carries the slope of the level over the input
 * times that difference: a clipping stage gives 1 dB a dB at most.
 */
final class StimulusChange {
    private static final double BETWEEN_CAPTURES = 0.01;
    private static final double FROM_SHEET = 0.05;

    private StimulusChange() {}

    /** Difference of the inputs in dB, where both were captured and it matters. */
    static Optional<Double> between(StateAtCondition from, StateAtCondition to) {
        Optional<Double> a = input(from.figure(WaveformQuantity.INPUT_FUNDAMENTAL));
        Optional<Double> b = input(to.figure(WaveformQuantity.INPUT_FUNDAMENTAL));
        if (a.isEmpty() || b.isEmpty() || Math.abs(b.get() / a.get() - 1) <= BETWEEN_CAPTURES) {
            return Optional.empty();
        }
        return Optional.of(Decibels.ofAmplitude(b.get() / a.get()));
    }

    /**
     * What the difference of the inputs adds to the uncertainty of a level change, dB: what the transfer curve of the capture with the
     * stronger input makes of it, or 1 dB a dB where there is no such curve.
     */
    static Optional<Contribution> ofLevel(StateAtCondition from, StateAtCondition to) {
        return between(from, to)
                .map(db -> new Contribution(Source.STIMULUS, ofLevel(db > 0 ? to : from, Math.abs(db))));
    }

    private static double ofLevel(StateAtCondition stronger, double db) {
        Optional<Double> peak = input(stronger.figure(WaveformQuantity.INPUT_FUNDAMENTAL));
        return stronger.first()
                .transfer()
                .flatMap(curve -> peak.map(a -> -LevelOverDrive.change(curve, a, a / Decibels.toAmplitude(db))))
                .map(Math::abs)
                .orElse(db);
    }

    /** The doubt that the two settings raise. */
    static Optional<Doubt> doubt(StateAtCondition from, StateAtCondition to) {
        return between(from, to)
                .map(db -> Doubt.of(
                        Severity.WARNING,
                        DoubtReason.STIMULUS_CHANGED,
                        Argument.decimals(Math.abs(db), Unit.DECIBEL, 2),
                        Argument.word(db > 0 ? Word.STRONGER : Word.WEAKER),
                        from.name()));
    }

    /** The doubt that a capture raises against the level that the sheet states. */
    static Optional<Doubt> fromSheet(CaptureResult capture) {
        double stated = capture.row().condition().level().orElse(0);
        Optional<Double> found = capture.waveform().flatMap(w -> input(w.get(WaveformQuantity.INPUT_FUNDAMENTAL)));
        if (!capture.hasVolts() || stated == 0 || found.isEmpty() || Math.abs(found.get() / stated - 1) <= FROM_SHEET) {
            return Optional.empty();
        }
        return Optional.of(Doubt.of(
                Severity.WARNING, DoubtReason.STIMULUS_CHANGED_SHEET, millivolts(found.get()), millivolts(stated)));
    }

    private static Argument millivolts(double volts) {
        return Argument.decimals(1000 * volts, Unit.VOLT, 1);
    }

    private static Optional<Double> input(Measured fundamental) {
        return fundamental.asValue().map(Measured.Value::number).filter(v -> v > 0);
    }
}
