package clipwitness.measure.match;

import clipwitness.measure.Measured;
import clipwitness.measure.junction.CurrentRange;
import clipwitness.measure.junction.Temperature;
import java.util.List;

/**
 * Two devices side by side.
 *
 * @param devices          their names
 * @param mismatch         root mean square of the voltage difference over the common currents, V
 * @param mismatchAt1mA    difference of the forward voltages at 1 mA, V, 0 or more
 * @param temperatureApart difference of the temperatures at which they were traced, K, 0 or more
 * @param range            currents over which the mismatch counts: above both traces' floors, in both curves
 */
public record MatchedPair(
        List<String> devices, Measured mismatch, Measured mismatchAt1mA, double temperatureApart, CurrentRange range) {
    private static final double LEFT_A_KELVIN = 0.3e-3;

    /** Copies what it is given. */
    public MatchedPair {
        devices = List.copyOf(devices);
        if (devices.size() != 2) {
            throw new IllegalArgumentException("a pair is two devices, not " + devices);
        }
    }

    /** What referring both traces to one temperature leaves of the mismatch, V, a bound: 0.3 mV a kelvin. */
    public double leftByTemperature() {
        return LEFT_A_KELVIN * temperatureApart;
    }

    /** Whether the traces were taken more than 3 K apart: then the slope of the voltage over temperature makes the comparison inexact. */
    public boolean tracedApart() {
        return temperatureApart > Temperature.FAR_APART_KELVIN;
    }
}
