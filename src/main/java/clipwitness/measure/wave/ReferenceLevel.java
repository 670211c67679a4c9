package clipwitness.measure.wave;

/**
 * A level from which extremes are counted.
 *
 * @param value  V
 * @param noise  standard uncertainty, V
 * @param shared covariance of it and of an extreme, V²
 */
public record ReferenceLevel(double value, double noise, double shared) {
    /** Variance from noise, V². */
    double variance() {
        return noise * noise;
    }

    /** A level found from samples that are not the extreme's. */
    public static ReferenceLevel apart(double value, double noise) {
        return new ReferenceLevel(value, noise, 0);
    }

    /** The mean of a wave, found from all samples, the extreme's among them: {@link FittedWave#sharedVariance}. */
    static ReferenceLevel meanOf(FittedWave wave) {
        return new ReferenceLevel(wave.fit().mean(), wave.meanUncertainty(), wave.sharedVariance());
    }
}
