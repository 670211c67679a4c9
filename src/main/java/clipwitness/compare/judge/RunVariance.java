package clipwitness.compare.judge;

import clipwitness.compare.result.CaptureResult;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How a figure of one setting differs from run to run. A level that noise bounds differs by nothing that is known.
 *
 * @param variance variance of the runs' figures about their mean, in the figure's unit squared
 * @param noise    the part of it that noise within the captures explains
 * @param freedom  degrees of freedom: runs less one
 * @param slope    slope of the figure over the gain control, absolute, for one percent; 0 at an end stop
 */
record RunVariance(double variance, double noise, int freedom, double slope) {
    private static final Set<Source> WITHIN_A_CAPTURE = EnumSet.of(Source.NOISE, Source.CONVERTER_STEP);

    /** Of a setting that was set more than once; empty where fewer than two runs have the figure. */
    static Optional<RunVariance> of(
            StateAtCondition setting, Function<StateAtCondition, Measured> figure, double slope) {
        List<Measured.Value> runs = runs(setting).stream()
                .map(figure)
                .flatMap(m -> m.asValue().stream())
                .filter(v -> !v.isBoundedLevel())
                .toList();
        if (runs.size() < 2) {
            return Optional.empty();
        }
        double first = runs.get(0).number();
        double[] from = runs.stream().mapToDouble(v -> difference(v, first)).toArray();
        double mean = 0;
        for (double d : from) {
            mean += d / from.length;
        }
        double squares = 0;
        for (double d : from) {
            squares += (d - mean) * (d - mean);
        }
        double noise = runs.stream().mapToDouble(RunVariance::noise).average().orElseThrow();
        return Optional.of(new RunVariance(squares / (runs.size() - 1), noise, runs.size() - 1, Math.abs(slope)));
    }

    /** The runs of a setting, each with its captures alone. */
    static List<StateAtCondition> runs(StateAtCondition setting) {
        Collection<List<CaptureResult>> byRun = setting.replicates().stream()
                .collect(Collectors.groupingBy(c -> c.row().run()))
                .values();
        return byRun.stream()
                .map(run -> new StateAtCondition(setting.state(), setting.label(), setting.condition(), run))
                .toList();
    }

    private static double difference(Measured.Value value, double first) {
        double difference = value.number() - first;
        return value.unit() == Unit.DEGREE ? Math.IEEEremainder(difference, 360) : difference;
    }

    private static double noise(Measured.Value value) {
        return value.budget().stream()
                .filter(c -> WITHIN_A_CAPTURE.contains(c.source()))
                .mapToDouble(Contribution::variance)
                .sum();
    }
}
