package clipwitness.measure.wave;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
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
        ReferenceLevel level = ReferenceLevel.meanOf(wave);
        double mean = level.value();
        double distance = up.value() + down.value() - 2 * mean;
        Extreme larger = distance >= 0 ? up : down;
        Extreme smaller = distance >= 0 ? down : up;
        double peak = Math.abs(larger.value() - mean);
        if (Math.abs(distance) > ALIKE * Math.hypot(up.noise(), down.noise())) {
            return over(wave, peak, larger.variance() + level.variance(), 2 * level.shared(), larger.step());
        }
        double half = Math.abs(distance) / 2;
        double variance = (larger.variance() + smaller.variance()) / 4;
        return over(wave, peak - half, variance, 0, larger.step())
                .plus(Source.METHOD, half / Math.sqrt(3) / wave.rms());
    }

    /** A peak over the rms; noise that lifts the samples of the peak lifts the rms as well, by the crest factor times as much as the mean. */
    private static Measured.Value over(FittedWave wave, double peak, double variance, double shared, double step) {
        double crest = peak / wave.rms();
        double ofRms = crest * RmsLevel.uncertainty(wave);
        double apart = variance + ofRms * ofRms;
        double together = shared + 2 * crest * crest * wave.sharedVariance();
        Measured.Value measured =
                Measured.withNoise(crest, Unit.ONE, Math.sqrt(Extreme.reduced(apart, together)) / wave.rms());
        return step > 0 ? measured.plus(Source.CONVERTER_STEP, step / wave.rms()) : measured;
    }
}
