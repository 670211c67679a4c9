package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Polynomials whose coefficients, variances and residuals are known by hand. */
class PolynomialFitValuesTest {
    private static final double[] FIVE = {10, 12, 14, 16, 18};

    private static WeightedPoints points(double[] x, DoubleUnaryOperator y, double weight) {
        double[] weights = new double[x.length];
        Arrays.fill(weights, weight);
        return new WeightedPoints(x, Arrays.stream(x).map(y).toArray(), weights);
    }

    private static WeightedPoints points(double... y) {
        double[] weights = new double[y.length];
        Arrays.fill(weights, 1);
        return new WeightedPoints(Arrays.copyOf(FIVE, y.length), y, weights);
    }

    private static double[] steps(int count, double first, double step) {
        return IntStream.range(0, count).mapToDouble(i -> first + step * i).toArray();
    }

    @Test
    void aCubicIsFoundWithItsSlope() {
        PolynomialFit fit = new PolynomialFit(points(steps(9, 3, 0.5), x -> x * x * x - 4 * x * x + 7, 2), 3);
        for (double x : new double[] {3, 4.2, 5, 6.9}) {
            assertThat(fit.at(x)).isCloseTo(x * x * x - 4 * x * x + 7, within(1e-9));
            assertThat(fit.slopeAt(x)).isCloseTo(3 * x * x - 8 * x, within(1e-8));
        }
    }

    /** Variance of a line: 1/n + (x - mean)² / S; of its slope 1/S; here n = 5, mean 14, S = 40. Twice the weight halves it. */
    @Test
    void aLineIsKnownAsOneOverNAndTheDistanceFromItsMiddle() {
        PolynomialFit line = new PolynomialFit(points(1, 2, 3, 4, 5), 1);
        assertThat(line.varianceAt(14)).isCloseTo(0.2, within(1e-12));
        assertThat(line.varianceAt(18)).isCloseTo(0.6, within(1e-12));
        assertThat(line.varianceAt(24)).isCloseTo(2.7, within(1e-12));
        assertThat(line.slopeVarianceAt(11)).isCloseTo(1.0 / 40, within(1e-12));
        PolynomialFit heavy = new PolynomialFit(points(FIVE, x -> x, 2), 1);
        assertThat(heavy.varianceAt(18)).isCloseTo(0.3, within(1e-12));
    }

    /** A parabola through -2 .. 2 has the variance 17/35 in its middle (M. Kendall, smoothing formula of five terms) and 31/35 at its ends. */
    @Test
    void aParabolaThroughFivePointsHasTheVariancesOfTheSmoothingFormula() {
        PolynomialFit parabola = new PolynomialFit(points(1, 2, 3, 4, 5), 2);
        assertThat(parabola.varianceAt(14)).isCloseTo(17.0 / 35, within(1e-12));
        assertThat(parabola.varianceAt(18)).isCloseTo(31.0 / 35, within(1e-12));
        assertThat(parabola.slopeVarianceAt(14)).isCloseTo(0.1 / 4, within(1e-12));
    }

    /** Covariance of a line at two places: 1/n + (x1 - mean)(x2 - mean) / S. */
    @Test
    void sharesOfNoiseMultiplyToTheCovarianceOfTwoPlaces() {
        double[][] shares = new PolynomialFit(points(1, 2, 3, 4, 5), 1).noiseShares(new double[] {12, 20});
        double product = IntStream.range(0, 2)
                .mapToDouble(j -> shares[0][j] * shares[1][j])
                .sum();
        double square = Arrays.stream(shares[1]).map(s -> s * s).sum();
        assertThat(product).isCloseTo(0.2 - 2 * 6 / 40.0, within(1e-12));
        assertThat(square).isCloseTo(0.2 + 36 / 40.0, within(1e-12));
    }

    /** 2, -1, -2, -1, 2 is orthogonal to every line: the line leaves 14 a² with 3 degrees of freedom, the parabola nothing. */
    private static WeightedPoints bent(double a) {
        return points(2 * a + 1, -a + 2, -2 * a + 3, -a + 4, 2 * a + 5);
    }

    /** Three degrees of freedom and two deviations of root 6 allow 7.899 s². */
    @Test
    void theResidualsOfNoiseAreChiSquared() {
        PolynomialFit line = new PolynomialFit(bent(1), 1);
        assertThat(line.fits(Math.sqrt(14 / 7.89), 2)).isTrue();
        assertThat(line.fits(Math.sqrt(14 / 7.91), 2)).isFalse();
        assertThat(line.scatter(0.1)).isCloseTo(Math.sqrt(14 / 3.0), within(1e-9));
        assertThat(line.scatter(1.5)).isEqualTo(1.5);
        assertThat(new PolynomialFit(points(1, 7), 1).scatter(1e-30)).isEqualTo(1e-30);
    }

    /** One coefficient more: the drop of 14 may be 1 + 3 root 2 = 5.243 s²; of two more with nothing gained the same holds. */
    @Test
    void aHigherDegreeIsBetterByNoMoreThanNoise() {
        PolynomialFit line = new PolynomialFit(bent(1), 1);
        PolynomialFit parabola = new PolynomialFit(bent(1), 2);
        assertThat(line.fitsAsWellAs(parabola, Math.sqrt(14 / 5.24), 3)).isTrue();
        assertThat(line.fitsAsWellAs(parabola, Math.sqrt(14 / 5.25), 3)).isFalse();
        PolynomialFit cubic = new PolynomialFit(bent(1), 3);
        assertThat(line.fitsAsWellAs(cubic, Math.sqrt(14 / 7.99), 3)).isTrue();
        assertThat(line.fitsAsWellAs(cubic, Math.sqrt(14 / 8.01), 3)).isFalse();
    }

    /** 1 - 1.5 s² / 14 for one coefficient more, 1 - 3 s² / 14 for two; nothing where that falls below zero. */
    @Test
    void ofWhatAHigherDegreeAddsNoiseIsTakenOff() {
        PolynomialFit line = new PolynomialFit(bent(1), 1);
        assertThat(line.shareOf(new PolynomialFit(bent(1), 2), 2)).isCloseTo(1 - 6.0 / 14, within(1e-9));
        assertThat(line.shareOf(new PolynomialFit(bent(1), 3), 2)).isCloseTo(1 - 12.0 / 14, within(1e-9));
        assertThat(line.shareOf(new PolynomialFit(bent(1), 2), 4)).isZero();
    }

    /** Straight up to 1 either side, bent beyond: with little noise the stretch narrows until the line holds, without asking it stays wide. */
    @Test
    void theStretchNarrowsUntilThePolynomialFits() {
        WeightedPoints corner = points(steps(401, -4, 0.02), x -> Math.abs(x) < 1 ? x : Math.signum(x), 1);
        PolynomialFit narrow = PolynomialFit.around(corner, 0, 3, 1, 1e-4);
        assertThat(narrow.slopeAt(0)).isCloseTo(1, within(0.01));
        PolynomialFit wide = PolynomialFit.around(corner, 0, 3, 1, Double.POSITIVE_INFINITY);
        assertThat(wide.slopeAt(0)).isCloseTo(new PolynomialFit(corner.between(-3, 3), 1).slopeAt(0), within(1e-9));
        assertThat(wide.varianceAt(0)).isCloseTo(1 / 301.0, within(2e-5));
        PolynomialFit allFits = PolynomialFit.around(points(steps(401, -4, 0.02), x -> 2 * x, 1), 0, 3, 1, 1e-4);
        assertThat(allFits.varianceAt(0)).isCloseTo(1 / 301.0, within(2e-5));
    }

    /** A parabola hidden in the noise of single points shows in the two coefficients that a higher degree has more. */
    @Test
    void aMisfitTooSmallForTheResidualsIsFoundByTheHigherDegree() {
        WeightedPoints weak = points(
                steps(401, -4, 0.02), x -> x + 0.05 * x * x + 0.2 * ((int) Math.rint((x + 4) / 0.02) % 2 - 0.5), 1);
        assertThat(new PolynomialFit(weak.between(-3, 3), 1).fits(0.11, 3)).isFalse();
        PolynomialFit fit = PolynomialFit.around(weak, 0, 3, 1, 0.17);
        assertThat(new PolynomialFit(weak.between(-3, 3), 1).fits(0.17, 3)).isTrue();
        assertThat(fit.varianceAt(0)).isGreaterThan(1.2 / 301);
    }

    /** Eight points a line needs: a stretch that holds none is widened until it does. */
    @Test
    void aStretchWithTooFewPointsWidens() {
        WeightedPoints sparse = points(steps(41, -20, 1), x -> 3 * x, 1);
        PolynomialFit fit = PolynomialFit.around(sparse, 0.3, 0.1, 1, Double.POSITIVE_INFINITY);
        assertThat(fit.slopeAt(0)).isCloseTo(3, within(1e-9));
        assertThat(1 / fit.varianceAt(0.5)).isBetween(7.5, 10.5);
    }
}
