package clipwitness.measure;

import clipwitness.quantity.Unit;

/**
 * An extreme of the mean cycle.
 *
 * @param value level of the extreme, V, mean included
 * @param phase where it lies, in cycles from the beginning of the mean cycle
 * @param noise standard uncertainty from noise, V
 * @param step  standard uncertainty from a converter step that no noise dithers, V
 */
record Extreme(double value, double phase, double noise, double step) {
    /** Distance from a level as a positive figure. */
    Measured distanceFrom(double level, double levelUncertainty) {
        Measured.Value distance =
                Measured.withNoise(Math.abs(value - level), Unit.VOLT, Math.hypot(noise, levelUncertainty));
        return step > 0 ? distance.plus(Source.CONVERTER_STEP, step) : distance;
    }
}
