package clipwitness.compare.result;

import clipwitness.job.CaptureRow;
import clipwitness.measure.junction.JunctionResult;
import clipwitness.measure.match.NamedDevice;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

    /** The traced devices among captures, in their order. */
    public static List<TracedDevice> among(List<CaptureResult> captures) {
        List<TracedDevice> traced = new ArrayList<>();
        for (CaptureResult c : captures) {
            c.junction()
                    .ifPresent(j -> traced.add(new TracedDevice(c.row().device().orElseThrow(), c.row(), j)));
        }
        return traced;
    }

    /** Devices by name; of two curves of one device the first. */
    public static Map<String, NamedDevice> byName(List<TracedDevice> traced) {
        Map<String, NamedDevice> byName = new LinkedHashMap<>();
        traced.forEach(d -> byName.putIfAbsent(d.name(), new NamedDevice(d.name(), d.result())));
        return byName;
    }
}
