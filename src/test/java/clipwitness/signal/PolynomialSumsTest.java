package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Least squares by hand: sums over a few points. */
class PolynomialSumsTest {
    private static WeightedPoints points(int count, DoubleUnaryOperator y) {
        double[] x = IntStream.range(0, count).mapToDouble(i -> i).toArray();
        double[] ones = new double[count];
        Arrays.fill(ones, 1);
        return new WeightedPoints(x, Arrays.stream(x).map(y).toArray(), ones);
    }

    /** At 0, 1, 2, 3 about their mean of 1.5 the squares sum up to 5: the slope has a variance of 1/5, the value of 1/4 and 1/5 of the square of the distance. */
    @Test
    void aLineHasItsValueSlopeAndVariances() {
        PolynomialFit line = new PolynomialFit(points(4, x -> 1 + 2 * x), 1);
        assertThat(line.at(1.5)).isCloseTo(4, within(1e-9));
        assertThat(line.slopeAt(7)).isCloseTo(2, within(1e-9));
        assertThat(line.varianceAt(1.5)).isCloseTo(0.25, within(1e-9));
        assertThat(line.varianceAt(0)).isCloseTo(0.25 + 2.25 / 5, within(1e-9));
        assertThat(line.slopeVarianceAt(0)).isCloseTo(0.2, within(1e-9));
        double[] shares = line.noiseShares(new double[] {0})[0];
        assertThat(Arrays.stream(shares).map(s -> s * s).sum()).isCloseTo(0.7, within(1e-9));
    }

    @Test
    void aParabolaHasItsSlopeEverywhere() {
        PolynomialFit parabola = new PolynomialFit(points(6, x -> x * x - 3 * x), 2);
        assertThat(parabola.slopeAt(2)).isCloseTo(1, within(1e-9));
        assertThat(parabola.slopeAt(4)).isCloseTo(5, within(1e-9));
        assertThat(parabola.at(5)).isCloseTo(10, within(1e-9));
    }

    /** Three samples of 0 and one of 4 have a mean of 1, known as four samples are. */
    @Test
    void aPointWeighsAsManySamplesAsItStandsFor() {
        PolynomialFit mean =
                new PolynomialFit(new WeightedPoints(new double[] {0, 1}, new double[] {0, 4}, new double[] {3, 1}), 0);
        assertThat(mean.at(9)).isCloseTo(1, within(1e-9));
        assertThat(mean.varianceAt(0)).isCloseTo(0.25, within(1e-9));
    }

    /** Ten values of 1 and -1 in turn: chi-squared of 9 degrees of freedom may be 9 + 3 sqrt 18 = 21.73, so s² = 10 / 21.73, s = 0.678. */
    @Test
    void residualsFitUpToThreeDeviationsOfChiSquared() {
        PolynomialFit mean = new PolynomialFit(points(10, x -> x % 2 == 0 ? 1 : -1), 0);
        assertThat(mean.fits(0.68, 3)).isTrue();
        assertThat(mean.fits(0.675, 3)).isFalse();
    }

    /** A rise of 0.1 over 0 to 9: the squares about the mean are 0.01 * 82.5. One more coefficient may take (1 + 3 sqrt 2) s²: s = 0.397. */
    @Test
    void aHigherPolynomialIsBetterWhereItTakesMoreThanNoiseWould() {
        WeightedPoints rise = points(10, x -> 0.1 * x);
        PolynomialFit mean = new PolynomialFit(rise, 0);
        PolynomialFit line = new PolynomialFit(rise, 1);
        assertThat(mean.fitsAsWellAs(line, 0.40, 3)).isTrue();
        assertThat(mean.fitsAsWellAs(line, 0.39, 3)).isFalse();
        assertThat(mean.shareOf(line, 0.5)).isCloseTo(1 - 0.375 / 0.825, within(1e-9));
        assertThat(mean.shareOf(line, 1)).isZero();
    }

    /** Level up to 100, then a slope of 1: a line around 150 keeps to the slope, one that may not narrow does not. */
    @Test
    void aStretchNarrowsUntilItsPolynomialFits() {
        WeightedPoints kink = points(201, x -> Math.max(0, x - 100));
        assertThat(PolynomialFit.around(kink, 150, 120, 1, 1e-3).slopeAt(150)).isCloseTo(1, within(1e-9));
        assertThat(PolynomialFit.around(kink, 150, 120, 1, Double.POSITIVE_INFINITY)
                        .slopeAt(150))
                .isLessThan(0.95);
    }
}
