package clipwitness.compare.judge;

import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** The mean of one figure over replicates. */
public final class Replicates {
    private Replicates() {}

    /**
     * Mean of the values, refusals left out; the first refusal where there is no value. Noise is independent from capture to
     * capture and falls with the root of their number; every other contribution is common to them and stays (JCGM 100, 5.2).
     * Angles are averaged about the first. Beside a level that noise bounds the mean is a bound too: the mean of what the amplitudes lie below.
     *
     * @param figures at least one, all in one unit
     */
    public static Measured mean(List<Measured> figures) {
        List<Measured.Value> values =
                figures.stream().flatMap(f -> f.asValue().stream()).toList();
        if (values.isEmpty()) {
            return figures.get(0);
        }
        if (values.size() == 1) {
            return values.get(0);
        }
        if (values.stream().anyMatch(Measured.Value::isBoundedLevel)) {
            return bound(values);
        }
        double sum = 0;
        for (Measured.Value v : values) {
            sum += nearFirst(v, values.get(0));
        }
        return new Measured.Value(
                sum / values.size(),
                values.get(0).unit(),
                budget(values),
                values.stream().allMatch(Measured.Value::isUpperBound));
    }

    private static Measured bound(List<Measured.Value> levels) {
        double amplitude = meanAmplitude(levels, Measured.Value::number);
        double largest = meanAmplitude(levels, v -> v.number() + v.expanded());
        double half = (largest - amplitude) / Measured.COVERAGE_FACTOR;
        return Measured.withNoise(amplitude, levels.get(0).unit(), half).asUpperBound();
    }

    /** Level of the mean of the amplitudes that levels stand for. */
    private static double meanAmplitude(List<Measured.Value> levels, ToDoubleFunction<Measured.Value> level) {
        return Decibels.ofAmplitude(levels.stream()
                .mapToDouble(v -> Decibels.toAmplitude(level.applyAsDouble(v)))
                .average()
                .orElseThrow());
    }

    private static double nearFirst(Measured.Value v, Measured.Value first) {
        return v.unit() == Unit.DEGREE
                ? first.number() + Math.IEEEremainder(v.number() - first.number(), 360)
                : v.number();
    }

    private static List<Contribution> budget(List<Measured.Value> values) {
        Map<Source, Double> squares = new EnumMap<>(Source.class);
        for (Measured.Value v : values) {
            for (Contribution c : v.budget()) {
                squares.merge(c.source(), c.standardUncertainty() * c.standardUncertainty(), Double::sum);
            }
        }
        List<Contribution> budget = new ArrayList<>();
        squares.forEach((source, square) -> {
            double meanSquare = square / values.size();
            budget.add(new Contribution(
                    source, Math.sqrt(source == Source.NOISE ? meanSquare / values.size() : meanSquare)));
        });
        return budget;
    }
}
