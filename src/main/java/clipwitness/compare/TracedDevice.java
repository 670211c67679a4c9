package clipwitness.compare;

import clipwitness.job.CaptureRow;
import clipwitness.measure.junction.JunctionResult;
import java.util.Objects;

/**
 * A device that was traced.
 *
 * @param name   name of the device
 * @param row    row of the captures table
 * @param result what was measured
 */
public record TracedDevice(String name, CaptureRow row, JunctionResult result) {
    /** Checks that all parts are there. */
    public TracedDevice {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(row, "row");
        Objects.requireNonNull(result, "result");
    }
}
