package clipwitness.measure.junction;

/**
 * Temperature at which a device was traced.
 *
 * @param celsius             °C, above absolute zero
 * @param standardUncertainty K, 0 or more
 */
public record Temperature(double celsius, double standardUncertainty) {
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
