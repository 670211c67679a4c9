package clipwitness.measure.wave;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;

/**
 * An extreme of the mean cycle.
 *
 * @param value level of the extreme, V, mean included
 * @param phase where it lies, in cycles from the beginning of the mean cycle
 * @param noise standard uncertainty from noise, V
 * @param step  standard uncertainty from a converter step that no noise dithers, V
 */
public record Extreme(double value, double phase, double noise, double step) {
    private static final double LEAST_SHARE = 0.5;

    /** Variance from noise, V². */
    double variance() {
        return noise * noise;
    }

    /** Distance from a level as a positive figure. */
    public Measured distanceFrom(ReferenceLevel level) {
        Measured.Value distance = Measured.withNoise(
                Math.abs(value - level.value()),
                Unit.VOLT,
                Math.sqrt(reduced(variance() + level.variance(), 2 * level.shared())));
        return step > 0 ? distance.plus(Source.CONVERTER_STEP, step) : distance;
    }

    /**
     * A variance less what covariances take from it (JCGM 100, 5.2.2). An extreme is an average over less than half of the samples, so they
     * take less than half where the noise is white as they suppose; no more is taken.
     */
    static double reduced(double variance, double byCovariance) {
        return Math.max(variance - byCovariance, LEAST_SHARE * variance);
    }
}
