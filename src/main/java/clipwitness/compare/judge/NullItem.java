package clipwitness.compare.judge;

import clipwitness.measure.Budget;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.pair.NullDepth;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Null depth of two settings with everything that adds to the remainder. Contributions are combined in the linear remainder and then
 * put in dB; a remainder that does not exceed its expanded uncertainty is an upper bound.
 */
public final class NullItem {
    private static final double HALF = 0.5;

    private NullItem() {}

    /** Null depth, dB. */
    static Measured of(StateAtCondition from, StateAtCondition to, Repeatability repeatability) {
        Measured depth = NullDepth.of(from.first(), to.first());
        Optional<Measured.Value> value = depth.asValue();
        if (value.isEmpty()) {
            return depth;
        }
        List<Contribution> parts = new ArrayList<>();
        double remainder = Decibels.toAmplitude(value.get().number());
        parts.add(new Contribution(Source.NOISE, noise(value.get(), remainder)));
        repeatability.ofRemainder(from).ifPresent(parts::add);
        repeatability.ofRemainder(to).ifPresent(parts::add);
        return inDecibels(value.get(), remainder, Budget.bySource(parts));
    }

    /** Share of the first setting in the variance of each source of {@link #of}: of the noise, which comes from both alike, one half. */
    static Map<Source, Double> shareOfFirst(StateAtCondition from, StateAtCondition to, Repeatability repeatability) {
        Map<Source, Double> shares = Change.shares(
                repeatability.ofRemainder(from).stream().toList(),
                repeatability.ofRemainder(to).stream().toList());
        shares.put(Source.NOISE, HALF);
        return shares;
    }

    /** The null depth above which two captures like this one would not show a difference, dB. */
    public static Measured smallest(StateAtCondition setting, Repeatability repeatability) {
        OptionalDouble noise = NullDepth.smallestRemainder(setting.first());
        if (noise.isEmpty() || noise.getAsDouble() == 0) {
            return Measured.refused(Unit.DECIBEL, FigureReason.CAPTURE_NOT_MEASURED);
        }
        double twice = repeatability
                .ofRemainder(setting)
                .map(c -> Budget.coverageFactor(List.of(c))
                        * Math.sqrt(2)
                        * c.standardUncertainty()) // once for each capture
                .orElse(0.0);
        return Measured.of(Decibels.ofAmplitude(Math.hypot(noise.getAsDouble(), twice)), Unit.DECIBEL);
    }

    /**
     * Linear remainder of two neighbouring settings of one state, a ratio; empty where it does not exceed the noise.
     */
    static Optional<Double> remainder(StateAtCondition a, StateAtCondition b) {
        return NullDepth.of(a.first(), b.first())
                .asValue()
                .filter(v -> !v.isUpperBound())
                .map(v -> Decibels.toAmplitude(v.number()));
    }

    private static double noise(Measured.Value depth, double remainder) {
        double expanded = depth.expandedUncertainty().orElseThrow();
        return remainder * (Decibels.toAmplitude(expanded) - 1) / 2;
    }

    private static Measured inDecibels(Measured.Value depth, double remainder, List<Contribution> linear) {
        double factor = Budget.coverageFactor(linear);
        double uncertainty = Budget.standardUncertainty(linear);
        double expanded = factor * uncertainty;
        double half = Decibels.ofAmplitude((remainder + expanded) / remainder) / factor;
        List<Contribution> budget = linear.stream()
                .map(c -> c.times(uncertainty > 0 ? half / uncertainty : 0))
                .toList();
        boolean bound = depth.isUpperBound() || expanded >= remainder;
        return new Measured.Value(depth.number(), depth.unit(), budget, bound);
    }
}
