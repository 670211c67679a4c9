package clipwitness.signal;

import java.util.Arrays;

/**
 * Monotone piecewise cubic through points: between two points the curve stays between their values, so it adds no crossing that the points
 * do not show. Slopes are the harmonic means of F. N. Fritsch and J. Butland, which satisfy the condition of Fritsch and R. E. Carlson, Monotone
 * piecewise cubic interpolation, SIAM J. Numer. Anal. 17 (1980) 238-246.
 */
public final class ShapePreservingInterpolation {
    private final double[] x;
    private final double[] y;
    private final double[] slopes;

    /**
     * A curve through points.
     *
     * @param x two abscissae or more, ascending
     * @param y as many finite ordinates
     * @throws IllegalArgumentException if the abscissae do not ascend, or the lengths differ
     */
    public ShapePreservingInterpolation(double[] x, double[] y) {
        if (x.length < 2 || x.length != y.length) {
            throw new IllegalArgumentException("a curve needs two points or more, as many x as y");
        }
        for (int i = 1; i < x.length; i++) {
            if (!(x[i] > x[i - 1])) {
                throw new IllegalArgumentException("abscissae must ascend but " + x[i - 1] + " comes before " + x[i]);
            }
        }
        this.x = x.clone();
        this.y = y.clone();
        this.slopes = slopes(x, y);
    }

    private static double[] slopes(double[] x, double[] y) {
        int last = x.length - 1;
        double[] secants = new double[last];
        for (int i = 0; i < last; i++) {
            secants[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        }
        double[] slopes = new double[last + 1];
        for (int i = 1; i < last; i++) {
            if (secants[i - 1] * secants[i] > 0) {
                double before = x[i] - x[i - 1];
                double after = x[i + 1] - x[i];
                slopes[i] = 3
                        * (before + after)
                        / ((2 * after + before) / secants[i - 1] + (after + 2 * before) / secants[i]);
            }
        }
        slopes[0] = endSlope(secants[0], last > 1 ? slopes[1] : secants[0]);
        slopes[last] = endSlope(secants[last - 1], last > 1 ? slopes[last - 1] : secants[last - 1]);
        return slopes;
    }

    /** Slope that makes the outermost piece a parabola, kept within the condition. */
    private static double endSlope(double secant, double neighbour) {
        double slope = (3 * secant - neighbour) / 2;
        if (slope * secant <= 0) {
            return 0;
        }
        return Math.abs(slope) > 3 * Math.abs(secant) ? 3 * secant : slope;
    }

    /**
     * Value of the curve.
     *
     * @param at between first and last abscissa
     * @throws IllegalArgumentException outside
     */
    public double value(double at) {
        int i = piece(at);
        double width = x[i + 1] - x[i];
        double t = (at - x[i]) / width;
        double rest = 1 - t;
        return y[i] * rest * rest * (1 + 2 * t)
                + y[i + 1] * t * t * (3 - 2 * t)
                + width * t * rest * (slopes[i] * rest - slopes[i + 1] * t);
    }

    /** Slope of the curve at one of the points. */
    public double slopeAtPoint(int point) {
        return slopes[point];
    }

    private int piece(double at) {
        if (!(at >= x[0] && at <= x[x.length - 1])) { // NaN lands here too
            throw new IllegalArgumentException(
                    "interpolation from " + x[0] + " to " + x[x.length - 1] + " does not reach " + at);
        }
        int found = Arrays.binarySearch(x, at);
        return Math.min(found >= 0 ? found : -found - 2, x.length - 2);
    }

    /** Where the curve, followed from its first point on, first rises to a level. */
    public Crossing crossing(double level) {
        if (y[0] >= level) {
            return new Crossing.BelowFirst();
        }
        for (int i = 1; i < x.length; i++) {
            if (y[i] >= level) {
                return new Crossing.At(
                        Root.between(v -> value(v) - level, x[i - 1], x[i]).orElse(x[i]));
            }
        }
        return new Crossing.NotReached();
    }
}
