package clipwitness.measure;

import clipwitness.quantity.Unit;

/** Crest factor, the larger of the two peaks over the rms of the swing; at least 1. Sine 1.4142, triangle 1.7321, square wave 1. */
final class CrestFactor {
    private CrestFactor() {}

    static Measured of(FittedWave wave, Extreme up, Extreme down) {
        double mean = wave.fit().mean();
        Extreme larger = up.value() - mean >= mean - down.value() ? up : down;
        double peak = Math.abs(larger.value() - mean);
        double rms = wave.rms();
        double noise = Math.hypot(larger.noise(), peak / rms * RmsLevel.uncertainty(wave)) / rms;
        Measured.Value crest = Measured.withNoise(peak / rms, Unit.ONE, noise);
        return larger.step() > 0 ? crest.plus(Source.CONVERTER_STEP, larger.step() / rms) : crest;
    }
}
