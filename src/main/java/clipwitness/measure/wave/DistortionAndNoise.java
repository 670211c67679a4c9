package clipwitness.measure.wave;

import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import clipwitness.signal.UsableBand;

/**
 * Distortion and noise: rms of all but the fundamental, mean removed, up to 20 kHz or 0.45 of the sample rate, over the rms of the same
 * band, in percent.
 */
final class DistortionAndNoise {
    private static final double AUDIO_BAND = 20_000;

    private DistortionAndNoise() {}

    static Measured of(FittedWave wave, double sampleRate) {
        double band = Math.min(AUDIO_BAND, UsableBand.HIGHEST_OVER_SAMPLE_RATE * sampleRate);
        double frequency = wave.fit().cyclesPerSample() * sampleRate;
        NoisyPower rest = NoisyPower.ZERO;
        for (int k = 2; k <= wave.count() && k * frequency <= band; k++) {
            rest = rest.plus(wave.harmonicPower(k));
        }
        double noise = 2 * wave.residual().powerUpTo(band / sampleRate, wave.scatter());
        double freedom = wave.cycle().freedom() * 2 * band / sampleRate;
        rest = rest.plus(new NoisyPower(noise, 2 * noise * noise / freedom, 0, 0));
        double fundamental = wave.fit().amplitude(1);
        double whole = Math.sqrt(fundamental * fundamental + Math.max(0, rest.power()));
        return rest.over(whole, Math.sqrt(wave.quadratureVariance(1)), 100, Unit.PERCENT);
    }
}
