package clipwitness.measure.wave;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;

/** Difference of two distances over their sum, in percent: (up - down) / (up + down), 0 where both are equal. */
public final class Asymmetry {
    private Asymmetry() {}

    /**
     * The asymmetry of two distances from a common level.
     *
     * @param level the level from which both are counted
     */
    public static Measured of(Extreme up, Extreme down, ReferenceLevel level) {
        double above = up.value() - level.value();
        double below = level.value() - down.value();
        double sum = above + below;
        double apart =
                square(2 * below * up.noise()) + square(2 * above * down.noise()) + square(2 * sum * level.noise());
        double noise = Math.sqrt(Extreme.reduced(apart, 2 * square(2 * sum) * level.shared())) / (sum * sum);
        double step = Math.hypot(2 * below * up.step(), 2 * above * down.step()) / (sum * sum);
        Measured.Value asymmetry = Measured.withNoise(100 * (above - below) / sum, Unit.PERCENT, 100 * noise);
        return step > 0 ? asymmetry.plus(Source.CONVERTER_STEP, 100 * step) : asymmetry;
    }

    private static double square(double x) {
        return x * x;
    }
}
