package clipwitness.measure.wave;

import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;

/**
 * Root mean square of the swing over whole periods, V: sqrt(sum of A_k² / 2) over the fitted harmonics and what they leave of the mean
 * cycle, noise removed. Sine of amplitude 1: 0.7071; square wave 1; triangle 0.5774.
 */
final class RmsLevel {
    private RmsLevel() {}

    static Measured of(FittedWave wave) {
        return Measured.withNoise(wave.rms(), Unit.VOLT, uncertainty(wave));
    }

    /** Standard uncertainty, V: the gradient is each coefficient over twice the rms. */
    static double uncertainty(FittedWave wave) {
        double[] gradient = new double[wave.fit().parameters()];
        double twice = 2 * wave.rms();
        for (int k = 1; k <= wave.count(); k++) {
            gradient[2 * k - 1] = wave.fit().cosine(k) / twice;
            gradient[2 * k] = wave.fit().sine(k) / twice;
        }
        return wave.uncertainty(gradient);
    }
}
