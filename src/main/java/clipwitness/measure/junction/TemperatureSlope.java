package clipwitness.measure.junction;

/**
 * What a junction's voltage at a steady current loses a kelvin: 1.5 to 2.1 mV, by common practice, so 1.8 mV with a bound of 0.3 mV
 * (u = a / sqrt 3).
 */
public final class TemperatureSlope {
    private static final double LOSS = 1.8e-3;
    private static final double UNCERTAINTY = 0.3e-3 / Math.sqrt(3);

    private TemperatureSlope() {}

    /** What a voltage, V, at one temperature has more at another, V: below 0 where the other is warmer. */
    public static double shift(Temperature from, Temperature to) {
        return -LOSS * (to.celsius() - from.celsius());
    }

    /**
     * Standard uncertainty of that, V: of the slope, and of the temperatures. Two readings of one thermometer go wrong together, so the larger
     * counts.
     */
    public static double uncertainty(Temperature from, Temperature to) {
        return Math.hypot(ofTheSlope(from, to), LOSS * Math.max(from.standardUncertainty(), to.standardUncertainty()));
    }

    /** The share of the slope alone, V. */
    public static double ofTheSlope(Temperature from, Temperature to) {
        return UNCERTAINTY * Math.abs(to.celsius() - from.celsius());
    }
}
