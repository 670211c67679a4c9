package clipwitness.compare.noise;

import clipwitness.measure.LevelChange;
import clipwitness.measure.LevelSide;
import clipwitness.measure.Measured;
import clipwitness.measure.noise.HumLine;
import clipwitness.measure.wave.NoisyPower;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which lines of the mains grew from one state to another.
 *
 * @param change    increase of all lines together, dB
 * @param lines     lines that grew, those that grew most first
 * @param evenShare share of the even multiples of the mains in what grew
 */
public record HumGrowth(Measured.Value change, List<Line> lines, double evenShare) {
    private static final double WORTH_NAMING = 0.1;

    /** Copies what it is given. */
    public HumGrowth {
        lines = List.copyOf(lines);
    }

    /**
     * A line that grew.
     *
     * @param frequency multiple of the nominal frequency, Hz
     * @param before    rms before, V; where the line did not stand out, what it lay below
     * @param after     rms after, V
     * @param isNew     whether it did not stand out before
     */
    public record Line(double frequency, double before, double after, boolean isNew) {}

    /**
     * The growth of one pair; empty where all lines together did not grow by more than a limit, uncertainty included, or hum was not looked for in both.
     *
     * @param limit dB
     */
    public static Optional<HumGrowth> beyond(double limit, NoisePair pair) {
        if (pair.withoutHum().isPresent() || pair.lines().isEmpty()) {
            return Optional.empty();
        }
        return level(pair.from(), pair.lines())
                .flatMap(a -> level(pair.to(), pair.lines()).map(b -> difference(b, a)))
                .filter(d -> !d.isUpperBound() && d.number() - d.expanded() > limit)
                .map(d -> grown(d, pair));
    }

    private static Optional<Measured.Value> level(NoiseAtCondition setting, Set<Integer> orders) {
        return setting.power(orders)
                .levelOver(1, 0, Unit.DECIBEL, FigureReason.LINE_HIDDEN)
                .asValue();
    }

    private static Measured.Value difference(Measured.Value after, Measured.Value before) {
        Measured.Value change = LevelChange.of(
                LevelSide.ofFirstOrder(before, List.of()), LevelSide.ofFirstOrder(after, List.of()), List.of());
        return after.isUpperBound() ? change.asUpperBound() : change;
    }

    private static HumGrowth grown(Measured.Value change, NoisePair pair) {
        List<Line> lines = new ArrayList<>();
        double all = 0;
        double even = 0;
        for (HumLine line : pair.to().hum()) {
            NoisyPower before = pair.from().power(Set.of(line.order()));
            double growth = line.square().power() - before.power();
            if (line.stands() && growth > 0 && line.square().amplitude() > before.largestAmplitude()) {
                all += growth;
                even += line.order() % 2 == 0 ? growth : 0;
                lines.add(line(line, before, pair));
            }
        }
        lines.sort(Comparator.comparingDouble(HumGrowth::growth).reversed());
        double least = WORTH_NAMING * all / 2;
        List<Line> named = lines.stream().filter(l -> growth(l) >= least).toList();
        return new HumGrowth(change, named, all > 0 ? even / all : 0);
    }

    private static double growth(Line line) {
        return line.after * line.after - line.before * line.before;
    }

    private static Line line(HumLine line, NoisyPower before, NoisePair pair) {
        boolean stood = pair.from().hum().stream().anyMatch(l -> l.order() == line.order() && l.stands());
        double amplitude = stood ? before.amplitude() : before.largestAmplitude();
        return new Line(
                line.frequency(), amplitude / Math.sqrt(2), line.square().amplitude() / Math.sqrt(2), !stood);
    }
}
