package clipwitness.signal;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/** Weighted least-squares polynomial y = c0 + c1 z + c2 z^2 + .. in z = (x - centre) / scale. */
public final class PolynomialFit {
    private static final double NARROWING = 0.8;
    private static final int POINTS_PER_PARAMETER = 4;
    private static final double SHRINKAGE = 1.5;
    private static final double SELDOM = 3; // standard deviations of chi-squared
    private static final double LEAST_PIVOT = 1e-14;
    private static final int CUBIC = 3;

    private final WeightedPoints data;
    private final int from;
    private final int to;
    private final double centre;
    private final double scale;
    private final SmallCholesky normal;
    private final double[] coefficients;
    private double[][] covariance;
    private double residualEnergy = Double.NaN;

    /**
     * Fits a polynomial.
     *
     * @param data   points, more of them with different abscissae than the degree
     * @param degree 0 or more
     */
    public PolynomialFit(WeightedPoints data, int degree) {
        this(data, 0, data.size(), degree);
    }

    /** The polynomial through the points with an abscissa from low to high. */
    public static PolynomialFit between(WeightedPoints data, double low, double high, int degree) {
        int from = data.indexFrom(low, false);
        return new PolynomialFit(data, from, Math.max(from, data.indexFrom(high, true)), degree);
    }

    /** Fits a polynomial to the points from an index up to another. */
    private PolynomialFit(WeightedPoints data, int from, int to, int degree) {
        this.data = data;
        this.from = from;
        this.to = to;
        double low = data.x(from);
        double high = data.x(to - 1);
        centre = (low + high) / 2;
        scale = high > low ? (high - low) / 2 : 1;
        double[] powers = new double[2 * degree + 1];
        double[] right = new double[degree + 1];
        if (degree <= CUBIC) {
            sumUpToCubic(powers, right);
        } else {
            sum(powers, right);
        }
        normal = new SmallCholesky(normal(powers, degree), LEAST_PIVOT);
        coefficients = normal.solve(right);
    }

    private void sum(double[] powers, double[] right) {
        for (int i = from; i < to; i++) {
            double z = (data.x(i) - centre) / scale;
            double power = data.weight(i);
            double y = data.y(i);
            for (int p = 0; p < right.length; p++) {
                powers[p] += power;
                right[p] += power * y;
                power *= z;
            }
            for (int p = right.length; p < powers.length; p++) {
                powers[p] += power;
                power *= z;
            }
        }
    }

    /** The same written out: most polynomials have so low a degree, and the loops over their powers cost more than the powers. */
    private void sumUpToCubic(double[] powers, double[] right) {
        double w0 = 0;
        double w1 = 0;
        double w2 = 0;
        double w3 = 0;
        double w4 = 0;
        double w5 = 0;
        double w6 = 0;
        double y0 = 0;
        double y1 = 0;
        double y2 = 0;
        double y3 = 0;
        for (int i = from; i < to; i++) {
            double z = (data.x(i) - centre) / scale;
            double weight = data.weight(i);
            double y = data.y(i) * weight;
            double square = weight * z * z;
            double cube = square * z;
            w0 += weight;
            w1 += weight * z;
            w2 += square;
            w3 += cube;
            w4 += square * z * z;
            w5 += cube * z * z;
            w6 += cube * z * z * z;
            y0 += y;
            y1 += y * z;
            y2 += y * z * z;
            y3 += y * z * z * z;
        }
        System.arraycopy(new double[] {w0, w1, w2, w3, w4, w5, w6}, 0, powers, 0, powers.length);
        System.arraycopy(new double[] {y0, y1, y2, y3}, 0, right, 0, right.length);
    }

    private static double[][] normal(double[] powers, int degree) {
        double[][] normal = new double[degree + 1][];
        for (int p = 0; p <= degree; p++) {
            normal[p] = Arrays.copyOfRange(powers, p, p + degree + 1);
        }
        return normal;
    }

    /** Worked out when it is first asked for: many fits are asked for their values alone. */
    private double[][] covariance() {
        if (covariance == null) {
            covariance = normal.inverse();
        }
        return covariance;
    }

    private double residualEnergy() {
        if (Double.isNaN(residualEnergy)) {
            residualEnergy = energy();
        }
        return residualEnergy;
    }

    private double energy() {
        double sum = 0;
        for (int i = from; i < to; i++) {
            double distance = data.y(i) - at(data.x(i));
            sum += data.weight(i) * distance * distance;
        }
        return sum;
    }

    private int points() {
        return to - from;
    }

    /** Value at x. */
    public double at(double x) {
        double z = (x - centre) / scale;
        double sum = 0;
        for (int p = coefficients.length - 1; p >= 0; p--) {
            sum = sum * z + coefficients[p];
        }
        return sum;
    }

    /** Slope at x. */
    public double slopeAt(double x) {
        double z = (x - centre) / scale;
        double sum = 0;
        for (int p = coefficients.length - 1; p >= 1; p--) {
            sum = sum * z + p * coefficients[p];
        }
        return sum / scale;
    }

    /** Variance of the value at x for samples of unit variance. */
    public double varianceAt(double x) {
        return quadratic(powers(x, 0));
    }

    /**
     * Noise of the values at some places as shares of independent noises, the same for all places: the squares at a place sum up to its
     * variance, the products at two places to their covariance, for samples of unit variance.
     */
    public double[][] noiseShares(double[] places) {
        Array2DRowRealMatrix whole = new Array2DRowRealMatrix(covariance(), false);
        RealMatrix factor = new CholeskyDecomposition(whole, 1e-6, 0).getL();
        return Arrays.stream(places)
                .mapToObj(x -> factor.preMultiply(powers(x, 0)))
                .toArray(double[][]::new);
    }

    /**
     * What the slope at x holds of each ordinate: the sum of the shares times the ordinates is the slope, whatever these are.
     *
     * @return one share a point, the first of them that of the point at {@link #first}
     */
    public double[] slopeShares(double x) {
        return shares(powers(x, 1));
    }

    /** What the value at x holds of each ordinate; as {@link #slopeShares}. */
    public double[] valueShares(double x) {
        return shares(powers(x, 0));
    }

    private double[] shares(double[] gradient) {
        double[] ofPowers = normal.solve(gradient);
        double[] shares = new double[points()];
        for (int i = 0; i < shares.length; i++) {
            double z = (data.x(from + i) - centre) / scale;
            double sum = 0;
            for (int p = ofPowers.length - 1; p >= 0; p--) {
                sum = sum * z + ofPowers[p];
            }
            shares[i] = data.weight(from + i) * sum;
        }
        return shares;
    }

    /** Index of the first point that was fitted. */
    public int first() {
        return from;
    }

    /** Variance of the slope at x for samples of unit variance. */
    public double slopeVarianceAt(double x) {
        return quadratic(powers(x, 1));
    }

    private double[] powers(double x, int derivative) {
        double z = (x - centre) / scale;
        double[] powers = new double[coefficients.length];
        double power = 1;
        for (int p = derivative; p < powers.length; p++) {
            powers[p] = derivative == 0 ? power : p * power / scale;
            power *= z;
        }
        return powers;
    }

    private double quadratic(double[] gradient) {
        double[][] known = covariance();
        double sum = 0;
        for (int i = 0; i < gradient.length; i++) {
            for (int j = 0; j < gradient.length; j++) {
                sum += gradient[i] * known[i][j] * gradient[j];
            }
        }
        return sum;
    }

    /**
     * Whether the residuals are no larger than noise makes them.
     *
     * @param scatter    standard deviation of one sample
     * @param deviations how many standard deviations of chi-squared are allowed
     */
    public boolean fits(double scatter, double deviations) {
        int freedom = points() - coefficients.length;
        return residualEnergy() <= (freedom + deviations * Math.sqrt(2.0 * freedom)) * scatter * scatter;
    }

    /**
     * Standard deviation of one sample about the polynomial: the known one, or where the residuals are larger than it makes them, theirs. A curve
     * that the polynomial does not follow moves its coefficients with the places of the samples as noise of that size would.
     *
     * @param known standard deviation of one sample
     */
    public double scatter(double known) {
        int freedom = points() - coefficients.length;
        return fits(known, SELDOM) || freedom < 1 ? known : Math.sqrt(residualEnergy() / freedom);
    }

    /**
     * Whether a polynomial of higher degree through the same points is no better than noise makes it: a test of a misfit of long waves that
     * is sharper than {@link #fits}.
     *
     * @param higher     that polynomial
     * @param scatter    standard deviation of one sample
     * @param deviations how many standard deviations of chi-squared are allowed
     */
    public boolean fitsAsWellAs(PolynomialFit higher, double scatter, double deviations) {
        int more = higher.coefficients.length - coefficients.length;
        return energyAbove(higher) <= (more + deviations * Math.sqrt(2.0 * more)) * scatter * scatter;
    }

    /**
     * Share of what a polynomial of higher degree adds to this one that is not noise, 0 to 1: 1 - 1.5 m s² / (drop of the squared residuals)
     * for m more coefficients (shrinkage after W. James, C. Stein, Estimation with quadratic loss, 1961; 1.5 holds the middle between
     * plateaus, where all is noise, and flat round crests).
     *
     * @param higher  that polynomial, through the same points
     * @param scatter standard deviation of one sample, s
     */
    public double shareOf(PolynomialFit higher, double scatter) {
        double noise = SHRINKAGE * (higher.coefficients.length - coefficients.length) * scatter * scatter;
        double drop = energyAbove(higher);
        return drop > noise ? 1 - noise / drop : 0;
    }

    private double energyAbove(PolynomialFit higher) {
        return residualEnergy() - higher.residualEnergy();
    }

    /**
     * The polynomial over the widest stretch around a centre that it fits; each try is narrower than the last, down to a few points. Noise
     * alone seldom narrows a stretch, because where it does, the error of what is left exceeds its own variance.
     *
     * @param data    points
     * @param centre  middle of the stretch
     * @param widest  half width of the first try
     * @param degree  degree of the polynomial
     * @param scatter standard deviation of one sample; infinite for the widest stretch, whatever its fit
     */
    public static PolynomialFit around(WeightedPoints data, double centre, double widest, int degree, double scatter) {
        int fewest = data.placesUpTo(POINTS_PER_PARAMETER * (degree + 1));
        double reach = widest;
        while (!data.holds(fewest, centre - reach, centre + reach)) {
            reach /= NARROWING;
        }
        while (true) {
            int from = data.indexFrom(centre - reach, false);
            int to = Math.max(from, data.indexFrom(centre + reach, true));
            PolynomialFit fit = new PolynomialFit(data, from, to, degree);
            reach *= NARROWING;
            if (Double.isInfinite(scatter)
                    || fit.suffices(scatter)
                    || !data.holds(fewest, centre - reach, centre + reach)) {
                return fit;
            }
        }
    }

    /** Whether neither the residuals nor a polynomial two degrees higher show that this one does not follow its points. */
    private boolean suffices(double scatter) {
        int higher = coefficients.length + 1;
        return fits(scatter, SELDOM)
                && (!data.part(from, to).holds(POINTS_PER_PARAMETER * (higher + 1))
                        || fitsAsWellAs(new PolynomialFit(data, from, to, higher), scatter, SELDOM));
    }
}
