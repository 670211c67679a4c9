package clipwitness.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** F. N. Fritsch, R. E. Carlson, Monotone piecewise cubic interpolation, SIAM J. Numer. Anal. 17 (1980): data RPN 14, from memory. */
class ShapePreservingInterpolationTest {
    private static final double[] X = {7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20};
    private static final double[] Y = {
        0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.943740, 0.998636, 0.999919, 0.999994
    };

    private static final double STEP = 1e-6;

    private final ShapePreservingInterpolation curve = new ShapePreservingInterpolation(X, Y);

    @Test
    void passesThroughEveryPoint() {
        for (int i = 0; i < X.length; i++) {
            assertThat(curve.value(X[i])).isCloseTo(Y[i], within(1e-15));
        }
    }

    @Test
    void risesWhereTheDataRise() {
        double last = 0;
        for (int i = 0; i <= 4000; i++) {
            double value = curve.value(7.99 + i * (20 - 7.99) / 4000);
            assertThat(value).isBetween(last - 1e-15, 1.0);
            last = value;
        }
    }

    /**
     * Through (0, 0), (1, 1), (2, 4) the slope in the middle is the harmonic mean of 1 and 3, 1.5; beside an extremum it is 0. A cubic with a
     * rise s over a width of 1, a slope n at its inner end and no curvature at its outer one has a slope of (3 s - n) / 2 there.
     */
    @Test
    void theOutermostPiecesEndWithoutCurvature() {
        ShapePreservingInterpolation rising =
                new ShapePreservingInterpolation(new double[] {0, 1, 2}, new double[] {0, 1, 4});
        assertThat(slope(rising, 1)).isCloseTo(1.5, within(1e-5));
        assertThat(slope(rising, STEP)).isCloseTo(0.75, within(1e-5));
        assertThat(slope(rising, 1e-4)).isCloseTo(slope(rising, STEP), within(1e-7));
        ShapePreservingInterpolation peak =
                new ShapePreservingInterpolation(new double[] {0, 1, 2}, new double[] {0, 1, 0});
        assertThat(slope(peak, STEP)).isCloseTo(1.5, within(1e-5));
        assertThat(slope(peak, 2 - STEP)).isCloseTo(-1.5, within(1e-5));
    }

    /** Pieces of very unequal widths and heights: no slope may carry the curve over a value of its neighbours. */
    @Test
    void theFirstAndTheLastPieceStayBetweenTheirValuesWhateverTheirNeighbours() {
        for (double width : new double[] {1e-6, 1e-3, 1, 1e3, 1e6}) {
            for (double height : new double[] {-1e6, -1, 0, 1e-6, 1, 1e6}) {
                ShapePreservingInterpolation uneven = new ShapePreservingInterpolation(
                        new double[] {0, 1, 1 + width, 2 + width}, new double[] {0, 1, 1 + height, 2 + height});
                double last = 0;
                for (int i = 0; i <= 100; i++) {
                    assertThat(uneven.value(i / 100.0))
                            .isBetween(Math.max(0, last - 1e-12), Math.min(1, last + 0.03 + 1e-12));
                    last = uneven.value(i / 100.0);
                }
            }
        }
    }

    @Test
    void aStraightLineStaysOne() {
        ShapePreservingInterpolation line =
                new ShapePreservingInterpolation(new double[] {0, 1, 4, 5}, new double[] {1, 3, 9, 11});
        assertThat(line.value(2.7)).isCloseTo(6.4, within(1e-14));
        assertThat(line.crossing(5))
                .isInstanceOfSatisfying(
                        Crossing.At.class, at -> assertThat(at.x()).isCloseTo(2, within(1e-9)));
    }

    /** Slope by a difference over a few millionths. */
    private static double slope(ShapePreservingInterpolation curve, double x) {
        return (curve.value(x + STEP) - curve.value(x - STEP)) / (2 * STEP);
    }
}
