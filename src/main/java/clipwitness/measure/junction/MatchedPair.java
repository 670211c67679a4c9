package clipwitness.measure.junction;

import clipwitness.measure.Measured;
import java.util.List;

/**
 * Two devices side by side.
 *
 * @param devices          their names
 * @param mismatch         root mean square of the voltage difference over the common currents, V
 * @param mismatchAt1mA    difference of the forward voltages at 1 mA, V, 0 or more
 * @param temperatureApart difference of the temperatures at which they were traced, K, 0 or more
 */
public record MatchedPair(List<String> devices, Measured mismatch, Measured mismatchAt1mA, double temperatureApart) {
    /** Copies what it is given. */
    public MatchedPair {
        devices = List.copyOf(devices);
        if (devices.size() != 2) {
            throw new IllegalArgumentException("a pair is two devices, not " + devices);
        }
    }

    /** Whether the traces were taken more than 3 K apart: then up to 2 mV/K of the mismatch are temperature. */
    public boolean tracedApart() {
        return temperatureApart > Temperature.FAR_APART_KELVIN;
    }
}
