package clipwitness.measure.transfer;

import clipwitness.signal.PolynomialFit;
import clipwitness.signal.WeightedPoints;

/**
 * A stretch of a transfer curve: the slope in its middle, of a parabola through its points, as shares of their outputs, and its variance. Both depend on the inputs
 * alone, so that all curves over the same inputs share them.
 */
final class Stretch {
    private static final int DENSE = 12;
    private static final double BELOW = 1 - 1e-9; // rounding

    private final WeightedPoints points;
    private final double middle;
    private final double reach;
    private final CurveNoise noise;
    private final boolean dense;
    private PolynomialFit parabola;
    private double uncertainty = Double.NaN;
    private double mostInverse = Double.NaN;
    private double[] shares;

    /**
     * A stretch.
     *
     * @param points points of one of the curves
     * @param middle its middle, V
     * @param reach  from there to its ends, V; more where it would hold too few points
     * @param noise  of the curves
     */
    Stretch(WeightedPoints points, double middle, double reach, CurveNoise noise) {
        this.points = points;
        this.middle = middle;
        this.reach = reach;
        this.noise = noise;
        this.dense = points.holds(DENSE, middle - reach, middle + reach);
    }

    /**
     * Whether it has points in a dozen places and tells the slope well enough. A slope is known best where nothing else is looked for and all points lie at the ends:
     * a stretch that would not do even so is not fitted.
     *
     * @param wanted largest standard uncertainty of the slope
     */
    boolean tells(double wanted) {
        return dense
                && noise.scatter() * noise.scatter() * BELOW <= wanted * wanted * mostInverse()
                && uncertainty() <= wanted;
    }

    /** What the inverse of the slope's variance is at most, for samples of unit variance. */
    private double mostInverse() {
        if (Double.isNaN(mostInverse)) {
            mostInverse = reach * reach * points.weight(middle - reach, middle + reach);
        }
        return mostInverse;
    }

    private PolynomialFit parabola() {
        if (parabola == null) {
            parabola = dense
                    ? PolynomialFit.between(points, middle - reach, middle + reach, 2)
                    : PolynomialFit.around(points, middle, reach, 2, Double.POSITIVE_INFINITY);
        }
        return parabola;
    }

    /** Slope in the middle of a curve over the same inputs. */
    double slopeOf(WeightedPoints curve) {
        if (shares == null) {
            shares = parabola().slopeShares(middle);
        }
        return curve.sum(shares, parabola().first());
    }

    /** Standard uncertainty of the slope: steps that no noise dithers may lift one end against the other by their own errors. */
    double uncertainty() {
        if (Double.isNaN(uncertainty)) {
            double ofScatter = noise.scatter() * Math.sqrt(parabola().slopeVarianceAt(middle));
            uncertainty = Math.hypot(ofScatter, noise.undithered() / (Math.sqrt(2) * reach));
        }
        return uncertainty;
    }
}
