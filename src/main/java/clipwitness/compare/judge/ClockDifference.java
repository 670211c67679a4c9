package clipwitness.compare.judge;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * By how much the test tone ran faster in the second of two captures, as their own sample clocks saw it: the clocks of generator and instrument
 * drift from day to day. Waves are compared on phase, so it is taken out of every comparison; here it is reported.
 *
 * @param condition under which condition
 * @param ratio     frequency of the second over that of the first, less 1, a ratio; beyond its expanded uncertainty
 */
public record ClockDifference(Condition condition, Measured.Value ratio) {
    /**
     * The differences between the captures of a comparison, those that do not exceed their expanded uncertainty left out.
     *
     * @param results    results that the comparison is part of
     * @param comparison the comparison
     */
    public static List<ClockDifference> of(JobResults results, Comparison comparison) {
        List<ClockDifference> differences = new ArrayList<>();
        for (Condition condition :
                comparison.items().stream().map(Item::condition).distinct().toList()) {
            Optional<Measured.Value> from = frequency(results, comparison.from(), condition);
            Optional<Measured.Value> to = frequency(results, comparison.to(), condition);
            from.flatMap(f -> to.map(t -> ratio(f, t)))
                    .filter(r -> Math.abs(r.number()) > r.expanded())
                    .ifPresent(r -> differences.add(new ClockDifference(condition, r)));
        }
        return differences;
    }

    private static Measured.Value ratio(Measured.Value from, Measured.Value to) {
        return Measured.withNoise(
                to.number() / from.number() - 1,
                Unit.ONE,
                Math.hypot(from.relativeUncertainty(), to.relativeUncertainty()));
    }

    private static Optional<Measured.Value> frequency(JobResults results, String state, Condition condition) {
        return results.waves(state, condition)
                .flatMap(c -> c.waveform().stream())
                .flatMap(w -> w.get(WaveformQuantity.FREQUENCY).asValue().stream())
                .findFirst();
    }
}
