package clipwitness.measure.junction;

import clipwitness.measure.Measured;
import java.util.Objects;

/**
 * Voltage of a device at a stated current.
 *
 * @param current A
 * @param voltage V
 */
public record ForwardVoltage(double current, Measured voltage) {
    /** Checks that there is a current. */
    public ForwardVoltage {
        Objects.requireNonNull(voltage, "voltage");
        if (!(current > 0)) {
            throw new IllegalArgumentException("current must be above 0 A but is " + current);
        }
    }
}
