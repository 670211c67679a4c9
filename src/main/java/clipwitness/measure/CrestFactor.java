package clipwitness.measure;

import clipwitness.quantity.Unit;

/**
 * Crest factor, the larger of the two peaks over the rms of the swing; at least 1. Sine 1.4142, triangle 1.7321, square wave 1. The larger
 * of two noisy peaks that are alike is too large on average: where their distance does not exceed its expanded uncertainty, their mean takes
 * its place, and the truth may lie anywhere from there to the larger one, which counts as uncertainty of the method.
 */
final class CrestFactor {
    private static final double ALIKE = 2;

    private CrestFactor() {}

    static Measured of(FittedWave wave, Extreme up, Extreme down) {
        double mean = wave.fit().mean();
        double distance = up.value() + down.value() - 2 * mean;
        Extreme larger = distance >= 0 ? up : down;
        Extreme smaller = distance >= 0 ? down : up;
        double peak = Math.abs(larger.value() - mean);
        if (Math.abs(distance) > ALIKE * Math.hypot(up.noise(), down.noise())) {
            return over(wave, peak, larger.noise(), larger.step());
        }
        double half = Math.abs(distance) / 2;
        return over(wave, peak - half, Math.hypot(larger.noise(), smaller.noise()) / 2, larger.step())
                .plus(Source.METHOD, half / Math.sqrt(3) / wave.rms());
    }

    private static Measured.Value over(FittedWave wave, double peak, double noise, double step) {
        double crest = peak / wave.rms();
        double whole = Math.hypot(noise, crest * RmsLevel.uncertainty(wave)) / wave.rms();
        Measured.Value measured = Measured.withNoise(crest, Unit.ONE, whole);
        return step > 0 ? measured.plus(Source.CONVERTER_STEP, step / wave.rms()) : measured;
    }
}
