package clipwitness.measure;

import clipwitness.quantity.Unit;

/** Difference of two distances over their sum, in percent: (up - down) / (up + down), 0 where both are equal. */
final class Asymmetry {
    private Asymmetry() {}

    /**
     * The asymmetry of two distances from a common level.
     *
     * @param levelUncertainty standard uncertainty of the level from which both are counted, V
     */
    static Measured of(Extreme up, Extreme down, double level, double levelUncertainty) {
        double above = up.value() - level;
        double below = level - down.value();
        double sum = above + below;
        double noise = Math.sqrt(square(2 * below * up.noise())
                        + square(2 * above * down.noise())
                        + square(2 * sum * levelUncertainty))
                / (sum * sum);
        double step = Math.hypot(2 * below * up.step(), 2 * above * down.step()) / (sum * sum);
        Measured.Value asymmetry = Measured.withNoise(100 * (above - below) / sum, Unit.PERCENT, 100 * noise);
        return step > 0 ? asymmetry.plus(Source.CONVERTER_STEP, 100 * step) : asymmetry;
    }

    private static double square(double x) {
        return x * x;
    }
}
