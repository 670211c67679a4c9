package clipwitness.measure;

import clipwitness.signal.PolynomialFit;
import clipwitness.signal.WeightedPoints;
import java.util.Optional;

/**
 * Extremes of the mean cycle, freed of the upward bias of a maximum over noisy bins. A polynomial is laid through the folded samples of the
 * arc around the extreme: the arc above 0.9 of it, or a flatter one where corners keep a polynomial of sixth order from fitting. The
 * order is two above the lowest that fits. Each half of the samples says where the extreme lies and the other half how high
 * that place is, so that no sample's noise lifts its own maximum.
 */
final class CrestSearch {
    private static final double[] DEPTHS = {0.1, 0.05, 0.025, 0.0125, 0.006};
    private static final int LOWEST_DEGREE = 2;
    private static final int HIGHEST_DEGREE = 6;
    private static final int SPARE_DEGREES = 2;
    private static final int REFERENCE_DEGREE = 10;
    private static final int POINTS_PER_DEGREE = 4;

    private final FittedWave wave;
    private final int sign;
    private final double[] swing;
    private final int top;

    private CrestSearch(FittedWave wave, int sign) {
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
    static Extreme of(FittedWave wave, int sign) {
        return new CrestSearch(wave, sign).find();
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
        double tolerated = Math.hypot(wave.scatter(), wave.undithered());
        WeightedPoints points = wave.cycle().points();
        WeightedPoints lastArc = points;
        int lastDegree = 0;
        for (double depth : DEPTHS) {
            WeightedPoints arc = arc(points, depth);
            Optional<PolynomialFit> reference = reference(arc).filter(r -> r.fits(tolerated));
            for (int degree = LOWEST_DEGREE; degree <= HIGHEST_DEGREE; degree += 2) {
                if (!arc.holds(POINTS_PER_DEGREE * (degree + SPARE_DEGREES))) {
                    break;
                }
                lastArc = arc;
                lastDegree = degree + SPARE_DEGREES;
                PolynomialFit fit = new PolynomialFit(arc, degree);
                if (reference.map(r -> fit.fitsAsWellAs(r, tolerated)).orElse(fit.fits(tolerated))) {
                    return extreme(new Crest(lastArc, lastDegree, sign));
                }
            }
        }
        return lastDegree == 0 ? highestBin() : extreme(new Crest(lastArc, lastDegree, sign));
    }

    private static Optional<PolynomialFit> reference(WeightedPoints arc) {
        return arc.holds(POINTS_PER_DEGREE * REFERENCE_DEGREE)
                ? Optional.of(new PolynomialFit(arc, REFERENCE_DEGREE))
                : Optional.empty();
    }

    /** The folded samples of the stretch around the top that stays above a share of it. */
    private WeightedPoints arc(WeightedPoints points, double depth) {
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
        double low = (double) from / bins;
        return points.cycleFrom(low).between(low, (to + 1.0) / bins);
    }

    private Extreme extreme(Crest crest) {
        double phase = crest.place() - Math.floor(crest.place());
        double noise = Math.hypot(wave.scatter() * crest.relativeUncertainty(), crest.methodUncertainty());
        return new Extreme(crest.height(), phase, noise, wave.undithered());
    }

    private Extreme highestBin() {
        double value = wave.fit().mean() + sign * swing[top];
        return new Extreme(value, (top + 0.5) / swing.length, wave.cycle().binUncertainty(), wave.undithered());
    }
}
