package clipwitness.compare.judge;

import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Decibels;
import java.util.Objects;
import java.util.Optional;

/**
 * The instrument's vertical accuracy in a comparison of levels: it cancels at one range of one instrument, and belongs to both captures
 * where ranges or instruments differ.
 */
public final class RangeChange {
    private RangeChange() {}

    /** Contribution to a change of level, dB. */
    public static Optional<Contribution> ofLevel(StateAtCondition from, StateAtCondition to) {
        if (!differ(from, to)) {
            return Optional.empty();
        }
        double relative = Math.hypot(relative(from), relative(to));
        return relative > 0
                ? Optional.of(new Contribution(Source.VERTICAL_ACCURACY, Decibels.PER_RELATIVE_AMPLITUDE * relative))
                : Optional.empty();
    }

    private static boolean differ(StateAtCondition from, StateAtCondition to) {
        return from.first().range().differsFrom(to.first().range())
                || !Objects.equals(instrument(from), instrument(to));
    }

    private static Optional<String> instrument(StateAtCondition setting) {
        return setting.replicates().get(0).row().instrument();
    }

    private static double relative(StateAtCondition setting) {
        Optional<Measured.Value> rms = setting.figure(WaveformQuantity.RMS).asValue();
        return rms.filter(v -> v.number() > 0)
                .map(v -> v.budget().stream()
                                .filter(c -> c.source() == Source.VERTICAL_ACCURACY)
                                .mapToDouble(Contribution::standardUncertainty)
                                .sum()
                        / v.number())
                .orElse(0.0);
    }
}
