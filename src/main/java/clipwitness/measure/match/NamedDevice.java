package clipwitness.measure.match;

import clipwitness.measure.junction.JunctionResult;
import java.util.Objects;

/**
 * A device and what was measured on it.
 *
 * @param name   name
 * @param result what was measured
 */
public record NamedDevice(String name, JunctionResult result) {
    /** Checks that both are there. */
    public NamedDevice {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(result, "result");
    }
}
