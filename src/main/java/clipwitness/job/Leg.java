package clipwitness.job;

import java.util.List;

/**
 * One leg of a clipping pair.
 *
 * @param devices devices in series; empty for an open leg
 */
public record Leg(List<String> devices) {
    /** Copies what it is given. */
    public Leg {
        devices = List.copyOf(devices);
    }
}
