package clipwitness.measure.transfer;

import clipwitness.signal.PolynomialFit;
import clipwitness.signal.WeightedPoints;

/**
 * A stretch of a transfer curve: the slope in its middle, of a parabola through its points, as shares of their outputs, and its variance. Both depend on the inputs
 * alone, so that all curves over the same inputs share them.
 */
final class Stretch {
    private static final int DENSE = 12;

    private final WeightedPoints points;
    private final double middle;
    private final double reach;
    private final boolean dense;
    private PolynomialFit parabola;
    private double[] shares;

    /**
     * A stretch.
     *
     * @param points points of one of the curves
     * @param middle its middle, V
     * @param reach  from there to its ends, V; more where it would hold too few points
     */
    Stretch(WeightedPoints points, double middle, double reach) {
        this.points = points;
        this.middle = middle;
        this.reach = reach;
        this.dense = points.holds(DENSE, middle - reach, middle + reach);
    }

    /** Whether it has points in a dozen places. */
    boolean isDense() {
        return dense;
    }

    private PolynomialFit parabola() {
        if (parabola == null) {
            parabola = PolynomialFit.around(points, middle, reach, 2, Double.POSITIVE_INFINITY);
        }
        return parabola;
    }

    /** Slope in the middle of a curve over the same inputs. */
    double slopeOf(WeightedPoints curve) {
        if (shares == null) {
            shares = parabola().slopeShares(middle);
        }
        int first = parabola().first();
        double slope = 0;
        for (int i = 0; i < shares.length; i++) {
            slope += shares[i] * curve.y(first + i);
        }
        return slope;
    }

    /**
     * Standard uncertainty of the slope.
     *
     * @param scatter    of one sample, V
     * @param undithered error of either end from steps that no noise dithers, V
     */
    double uncertainty(double scatter, double undithered) {
        return Math.hypot(scatter * Math.sqrt(parabola().slopeVarianceAt(middle)), undithered / (Math.sqrt(2) * reach));
    }
}
