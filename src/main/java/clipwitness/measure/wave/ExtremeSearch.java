package clipwitness.measure.wave;

import clipwitness.signal.WeightedPoints;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Extremes of the mean cycle, freed of the upward bias of a maximum over noisy bins. A polynomial is laid through the folded samples of the
 * arc around the extreme: the arc above 0.9 of it, or a flatter one where corners keep a polynomial of sixth order from fitting. For each
 * arc the order is the lowest that fits; of the arcs, the one whose middle is known best is taken. {@link ArcMaximum} gives the height.
 */
public final class ExtremeSearch {
    private static final List<Double> DEPTHS = List.of(0.1, 0.05, 0.025, 0.0125, 0.006);
    private static final List<Double> DEVIATIONS = List.of(3.0, 5.0);
    private static final int BINS_TO_TRIM = 8;
    private static final int BINS_OF_ONE_TRIMMED = 32;

    /** A value that noise tosses between two codes scatters by half a step; the undithered share of a step is a root 12th of it. */
    private static final double BETWEEN_TWO_CODES = Math.sqrt(3);

    private final FittedWave wave;
    private final int sign;
    private final double[] swing;
    private final int top;

    private ExtremeSearch(FittedWave wave, int sign) {
        this.wave = wave;
        this.sign = sign;
        this.swing = smoothed(wave, sign);
        int highest = 0;
        for (int i = 1; i < swing.length; i++) {
            highest = swing[i] > swing[highest] ? i : highest;
        }
        this.top = highest;
    }

    /** The upper extreme (sign 1) or the lower one (sign -1). */
    public static Extreme of(FittedWave wave, int sign) {
        return new ExtremeSearch(wave, sign).find();
    }

    /** Swing of the mean cycle, each bin averaged with its neighbours. */
    private static double[] smoothed(FittedWave wave, int sign) {
        double[] values = wave.cycle().values();
        int bins = values.length;
        double[] swing = new double[bins];
        for (int i = 0; i < bins; i++) {
            double sum = values[(i + bins - 1) % bins] + values[i] + values[(i + 1) % bins];
            swing[i] = sign * (sum / 3 - wave.fit().mean());
        }
        return swing;
    }

    private Extreme find() {
        double tolerated = Math.hypot(wave.scatter(), BETWEEN_TWO_CODES * wave.undithered());
        double margin = 0.5 / swing.length;
        WeightedPoints points = wave.cycle().points();
        List<WeightedPoints> stretches =
                DEPTHS.stream().map(depth -> stretch(points, depth)).toList();
        for (double deviations : DEVIATIONS) {
            Optional<Arc> best = stretches.stream()
                    .flatMap(s -> Arc.fitting(s, margin, tolerated, deviations).stream())
                    .min(Comparator.comparingDouble(Arc::variance));
            if (best.isPresent()) {
                return extreme(best.get());
            }
        }
        Optional<Arc> flattest = stretches.stream()
                .flatMap(s -> Arc.ofHighestDegree(s, margin).stream())
                .reduce((flat, flatter) -> flatter);
        return flattest.map(this::extreme).orElseGet(this::highestBin);
    }

    /** The folded samples of the stretch around the top that stays above a share of it, corners at its ends left out. */
    private WeightedPoints stretch(WeightedPoints points, double depth) {
        double level = swing[top] * (1 - depth) - 2 * wave.cycle().binUncertainty();
        int bins = swing.length;
        int from = top;
        while (top - from < bins / 2 && swing[Math.floorMod(from - 1, bins)] >= level) {
            from--;
        }
        int to = top;
        while (to - top < bins / 2 && swing[(to + 1) % bins] >= level) {
            to++;
        }
        int trimmed = to - from >= BINS_TO_TRIM ? Math.max(1, (to - from) / BINS_OF_ONE_TRIMMED) : 0;
        double low = (double) (from + trimmed) / bins;
        return points.cycleFrom(low).between(low, (to + 1.0 - trimmed) / bins);
    }

    private Extreme extreme(Arc arc) {
        ArcMaximum crest = new ArcMaximum(arc, sign, wave.scatter());
        double phase = crest.place() - Math.floor(crest.place());
        return new Extreme(crest.height(), phase, crest.uncertainty(), wave.undithered());
    }

    private Extreme highestBin() {
        double value = wave.fit().mean() + sign * swing[top];
        return new Extreme(value, (top + 0.5) / swing.length, wave.cycle().binUncertainty(), wave.undithered());
    }
}
