package clipwitness.measure.transfer;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;

/**
 * The corners of a low-pass and a high-pass behind a clipper that leave the smallest gap between the branches of its transfer curve, with what
 * noise and the remaining gap leave open of them. Each harmonic from the second up tells how well a pair of corners does; the covariance of the
 * corners is that of a least-squares fit whose points scatter by different amounts, each by its noise or by its remainder,
 * whichever is larger (the estimate HC3 of J. G. MacKinnon, H. White, Journal of Econometrics 29, 1985).
 */
final class CornerSearch {
    private static final int GRID = 12;
    private static final double FIRST_STEP = 1.0 / GRID;
    private static final double LAST_STEP = 1e-5;
    private static final double DERIVATIVE = 1e-4;
    private static final double LEAST_FREEDOM = 0.2;
    private static final double LEAST_REACH = 1e-4;
    private static final double REACH_STEP = 1.1;
    private static final double[][] WAYS = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, -1}, {1, -1}, {-1, 1}};

    private final Branches branches;
    /** Gaps that are known: the ways of one step lead to places of the last one. */
    private final Map<Corners, Double> gaps = new HashMap<>();

    private final Corners best;
    /** Lower triangle of the covariance's root: low from low, high from low, high from high. */
    private final double[] spread;

    CornerSearch(Branches branches) {
        this.branches = branches;
        this.best = refined(coarse());
        this.spread = spread();
    }

    /** The corners. */
    Corners best() {
        return best;
    }

    /** Corners as they may be, too: drawn from their covariance, within the bounds. */
    Corners drawn(Random random) {
        double first = random.nextGaussian();
        double second = random.nextGaussian();
        return Corners.within(best.low() + spread[0] * first, best.high() + spread[1] * first + spread[2] * second);
    }

    /** Standard uncertainties of {@link Corners#low} and {@link Corners#high}. */
    double[] uncertainty() {
        return new double[] {spread[0], Math.hypot(spread[1], spread[2])};
    }

    private double gap(Corners corners) {
        return gaps.computeIfAbsent(corners, this::measured);
    }

    private double measured(Corners corners) {
        double[] parts = branches.parts(corners);
        double sum = 0;
        for (int k = 2; k < parts.length; k++) {
            sum += parts[k] * parts[k];
        }
        return sum / branches.power(corners);
    }

    private Corners coarse() {
        Corners found = Corners.NONE;
        double least = gap(found);
        for (int i = 0; i <= GRID; i++) {
            for (int j = 0; j <= GRID; j++) {
                Corners corners = new Corners(Corners.MOST_LOW * i / GRID, Corners.MOST_HIGH * j / GRID);
                double gap = gap(corners);
                if (gap < least) {
                    least = gap;
                    found = corners;
                }
            }
        }
        return found;
    }

    private Corners refined(Corners start) {
        Corners found = start;
        double least = gap(found);
        double step = FIRST_STEP;
        while (step > LAST_STEP) {
            Corners better = found;
            for (double[] way : WAYS) {
                Corners next = Corners.within(
                        found.low() + way[0] * step * Corners.MOST_LOW,
                        found.high() + way[1] * step * Corners.MOST_HIGH);
                double gap = gap(next);
                if (gap < least) {
                    least = gap;
                    better = next;
                }
            }
            step = better.equals(found) ? step / 2 : step;
            found = better;
        }
        return found;
    }

    /** Parts over the root of the power at corners off the best ones. */
    private double[] relative(double low, double high) {
        Corners corners = new Corners(best.low() + low, best.high() + high);
        double[] parts = branches.parts(corners);
        double scale = Math.sqrt(branches.power(corners));
        for (int k = 0; k < parts.length; k++) {
            parts[k] /= scale;
        }
        return parts;
    }

    private static double[] slope(double[] more, double[] less) {
        double[] slope = new double[more.length];
        for (int k = 2; k < slope.length; k++) {
            slope[k] = (more[k] - less[k]) / (2 * DERIVATIVE);
        }
        return slope;
    }

    private double[] spread() {
        double[] a = slope(relative(DERIVATIVE, 0), relative(-DERIVATIVE, 0));
        double[] b = slope(relative(0, DERIVATIVE), relative(0, -DERIVATIVE));
        double aa = dot(a, a);
        double ab = dot(a, b);
        double bb = dot(b, b);
        double determinant = aa * bb - ab * ab;
        if (!(determinant > 0)) {
            return new double[] {Corners.MOST_LOW, 0, Corners.MOST_HIGH};
        }
        double[] left = relative(0, 0);
        double[] low = new double[left.length];
        double[] high = new double[left.length];
        double[] errors = new double[left.length];
        for (int k = 2; k < left.length; k++) {
            double ofLow = (bb * a[k] - ab * b[k]) / determinant;
            double ofHigh = (aa * b[k] - ab * a[k]) / determinant;
            double freedom = Math.max(LEAST_FREEDOM, 1 - a[k] * ofLow - b[k] * ofHigh);
            double noise = Math.sqrt(branches.variance(k, best) / branches.power(best));
            double error = Math.max(Math.abs(left[k]) / freedom, noise);
            errors[k] = error;
            low[k] = ofLow * error;
            high[k] = ofHigh * error;
        }
        double varianceLow = dot(low, low);
        double root = Math.sqrt(varianceLow);
        double covariance = dot(low, high);
        double rest = Math.max(0, dot(high, high) - (root > 0 ? covariance * covariance / varianceLow : 0));
        double reach = Math.min(root, reach(left, errors));
        return new double[] {reach, root > 0 ? covariance / root * (reach / root) : 0, Math.sqrt(rest)};
    }

    /**
     * How far the low-pass can be off its best corner before the gap shows it. Once its delay is taken out a low-pass far above the harmonics
     * changes them by the cube of {@link Corners#low}, so near 0 a slope says nothing of it.
     *
     * @param left   parts that the best corners leave
     * @param errors how far each part is known
     */
    private double reach(double[] left, double[] errors) {
        double known = dot(errors, errors);
        double reach = LEAST_REACH;
        while (reach < Corners.MOST_LOW && moved(left, reach) < known) {
            reach *= REACH_STEP;
        }
        return Math.min(reach, Corners.MOST_LOW);
    }

    private double moved(double[] left, double low) {
        double[] there = relative(low, 0);
        double sum = 0;
        for (int k = 2; k < left.length; k++) {
            sum += (there[k] - left[k]) * (there[k] - left[k]);
        }
        return sum;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int k = 0; k < a.length; k++) {
            sum += a[k] * b[k];
        }
        return sum;
    }
}
