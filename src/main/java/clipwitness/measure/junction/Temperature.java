package clipwitness.measure.junction;

/**
 * Temperature at which a device was traced.
 *
 * @param celsius             °C, above absolute zero
 * @param standardUncertainty K, 0 or more
 */
public record Temperature(double celsius, double standardUncertainty) {
    /** What a silicon or germanium junction loses, V/K (measurement book, section 6: common practice). */
    public static final double VOLTS_PER_KELVIN = 2e-3;

    /** Temperatures farther apart than this, K, make a comparison of junctions inexact (measurement book, section 6). */
    public static final double FAR_APART_KELVIN = 3;

    /** Checks the ranges. */
    public Temperature {
        if (!(celsius > -ThermalVoltage.ZERO_CELSIUS && celsius < Double.POSITIVE_INFINITY)) { // NaN lands here too
            throw new IllegalArgumentException("no temperature: " + celsius + " °C");
        }
        if (!(standardUncertainty >= 0)) {
            throw new IllegalArgumentException("uncertainty must be 0 or more but is " + standardUncertainty);
        }
    }
}
