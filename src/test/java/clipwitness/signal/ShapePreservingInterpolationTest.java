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

    @Test
    void aStraightLineStaysOne() {
        ShapePreservingInterpolation line =
                new ShapePreservingInterpolation(new double[] {0, 1, 4, 5}, new double[] {1, 3, 9, 11});
        assertThat(line.value(2.7)).isCloseTo(6.4, within(1e-14));
        assertThat(line.crossing(5))
                .isInstanceOfSatisfying(
                        Crossing.At.class, at -> assertThat(at.x()).isCloseTo(2, within(1e-9)));
    }
}
