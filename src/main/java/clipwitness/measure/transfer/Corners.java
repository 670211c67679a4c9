package clipwitness.measure.transfer;

import clipwitness.measure.FilterCorners;
import java.util.OptionalDouble;
import org.apache.commons.math3.complex.Complex;

/**
 * Two filters of the first order behind a clipper, their corners in terms of the fundamental f0: response at harmonic k is
 * 1 / ((1 + j k a) (1 - j b / k)).
 *
 * @param low  a, f0 over the corner of the low-pass: 0 without one, 2/3 at most
 * @param high b, corner of the high-pass over f0: 0 without one, 1/3 at most
 */
public record Corners(double low, double high) {
    /** Lowest corner of a low-pass: 1.5 f0. */
    static final double MOST_LOW = 1 / 1.5;
    /** Highest corner of a high-pass: f0 / 3. */
    static final double MOST_HIGH = 1.0 / 3;

    static final Corners NONE = new Corners(0, 0);

    /** The nearest corners within the bounds. */
    static Corners within(double low, double high) {
        return new Corners(Math.max(0, Math.min(low, MOST_LOW)), Math.max(0, Math.min(high, MOST_HIGH)));
    }

    /** What harmonic k is multiplied with to take both filters off. */
    Complex inverse(int k) {
        return new Complex(inverseReal(), inverseImaginary(k));
    }

    /** Real part of that, the same for all harmonics. */
    double inverseReal() {
        return 1 + low * high;
    }

    /** Imaginary part of that. */
    double inverseImaginary(int k) {
        return k * low - high / k;
    }

    /** Square of its magnitude. */
    double inversePower(int k) {
        return inverseReal() * inverseReal() + inverseImaginary(k) * inverseImaginary(k);
    }

    /** The same without the delay that the fundamental has by it, k times as large an angle at harmonic k. */
    Complex undelayed(int k) {
        return inverse(k).multiply(new Complex(Math.cos(k * delay()), -Math.sin(k * delay())));
    }

    /** Angle of the fundamental's delay, rad. */
    double delay() {
        return inverse(1).getArgument();
    }

    /** The corners in Hz, of a fundamental in Hz. */
    FilterCorners inHertz(double fundamental) {
        return new FilterCorners(
                low > 0 ? OptionalDouble.of(fundamental / low) : OptionalDouble.empty(),
                high > 0 ? OptionalDouble.of(fundamental * high) : OptionalDouble.empty());
    }
}
