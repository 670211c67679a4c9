package clipwitness.report;

import clipwitness.measure.junction.NamedDevice;
import java.util.List;
import java.util.Objects;

/**
 * Devices ranked into pairs.
 *
 * @param devices devices in the order given
 * @param pairs   pairs, smallest mismatch first
 * @param left    devices without a partner
 * @param digest  one digest over all files, hexadecimal SHA-256
 */
public record Ranking(List<NamedDevice> devices, List<RankedPair> pairs, List<String> left, String digest) {
    /** Copies what it is given. */
    public Ranking {
        Objects.requireNonNull(digest, "digest");
        devices = List.copyOf(devices);
        pairs = List.copyOf(pairs);
        left = List.copyOf(left);
    }
}
