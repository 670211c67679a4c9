package clipwitness.measure.wave;

import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;

/**
 * Distortion over the whole signal, the second convention of the field (THD_R): t / sqrt(1 + t²), t the distortion over the fundamental; in
 * percent, never above 100. It is what a meter shows that filters the fundamental out and divides by all there is. Up to 10 % both
 * conventions differ by less than 0.5 % of the reading; a square wave has 45.69 % over the fundamental and 41.56 % over the whole, with 20 harmonics.
 * Where the distortion is a bound, so is this; where it is refused, this is refused for the same reason.
 */
final class DistortionOfTotal {
    private DistortionOfTotal() {}

    /** From the distortion over the fundamental, in percent. */
    static Measured of(Measured thd) {
        return thd.asValue().<Measured>map(DistortionOfTotal::of).orElse(thd);
    }

    /** The slope of t / sqrt(1 + t²) is (1 + t²) to the power of -3/2. */
    private static Measured of(Measured.Value thd) {
        double ratio = thd.number() / 100;
        double hypotenuse = Math.hypot(1, ratio);
        double slope = 1 / (hypotenuse * hypotenuse * hypotenuse);
        return new Measured.Value(
                100 * ratio / hypotenuse,
                Unit.PERCENT,
                thd.budget().stream().map(c -> c.times(slope)).toList(),
                thd.isUpperBound());
    }
}
