package clipwitness.compare.hint;

import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.job.State;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import java.util.List;
import java.util.Optional;

/**
 * Halves at another ratio than predicted, where the gain behind the clipper is not known and volts are not predicted. The asymmetries of clip
 * levels and of peaks both deviate, in one direction, at each of the settings, by more than one and a half times the uncertainty of the
 * difference and that of the clip levels by more than five points; the predictions of the state before hold. A ratio does not tell which half
 * it is.
 *
 * @param state   state that deviates
 * @param highest its prediction at the highest gain
 */
record RatioDeviation(State state, StatePrediction highest) implements Deviation {
    private static final double BEYOND = 1.5;
    private static final double LEAST_POINTS = 5;

    /** What deviates; empty where nothing does, or where the predictions of the state before do not hold. */
    static Optional<Deviation> of(State state, List<StatePrediction> clipped, List<StatePrediction> before) {
        double direction = Math.signum(difference(clipped.get(0), WaveformQuantity.CLIP_ASYMMETRY));
        boolean hold = before.stream()
                .allMatch(p -> holds(p, WaveformQuantity.CLIP_ASYMMETRY) && holds(p, WaveformQuantity.ASYMMETRY));
        boolean deviate = clipped.stream()
                .allMatch(p -> deviates(p, WaveformQuantity.CLIP_ASYMMETRY, direction, LEAST_POINTS)
                        && deviates(p, WaveformQuantity.ASYMMETRY, direction, 0));
        return hold && deviate ? Optional.of(new RatioDeviation(state, clipped.get(0))) : Optional.empty();
    }

    @Override
    public Remark finding(Argument states) {
        return Remark.of(HintRemark.LEGS_RATIO, states);
    }

    @Override
    public Remark evidence() {
        Prediction figure = figure(highest, WaveformQuantity.CLIP_ASYMMETRY).orElseThrow();
        double expanded = figure.expandedUncertainty().orElseThrow();
        int decimals = NumberText.decimals(expanded, 1);
        return Remark.of(
                HintRemark.LEGS_RATIO_BY,
                Evidence.place(highest.condition().gainPercent()),
                Argument.signed(figure.measured().value().orElseThrow(), Unit.PERCENT, decimals),
                Argument.signed(figure.predicted().value().orElseThrow(), Unit.PERCENT, decimals),
                Argument.decimals(expanded, Unit.PERCENT, decimals));
    }

    private static Optional<Prediction> figure(StatePrediction prediction, WaveformQuantity quantity) {
        return prediction
                .figure(quantity.key())
                .filter(f ->
                        f.difference().isPresent() && f.expandedUncertainty().isPresent());
    }

    /** Measured less predicted, in percent; 0 where one is not known. */
    private static double difference(StatePrediction prediction, WaveformQuantity quantity) {
        return figure(prediction, quantity)
                .map(f -> -f.difference().orElseThrow())
                .orElse(0.0);
    }

    private static double bound(StatePrediction prediction, WaveformQuantity quantity) {
        return figure(prediction, quantity)
                .map(f -> BEYOND * f.expandedUncertainty().orElseThrow())
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static boolean deviates(
            StatePrediction prediction, WaveformQuantity quantity, double direction, double least) {
        return direction * difference(prediction, quantity) > Math.max(least, bound(prediction, quantity));
    }

    private static boolean holds(StatePrediction prediction, WaveformQuantity quantity) {
        return figure(prediction, quantity).isPresent()
                && Math.abs(difference(prediction, quantity)) <= bound(prediction, quantity);
    }
}
