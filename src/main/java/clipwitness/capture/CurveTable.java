package clipwitness.capture;

import clipwitness.reason.Doubt;
import clipwitness.reason.Remark;
import java.util.List;
import java.util.Objects;

/**
 * A traced curve: pairs of voltage and current in the order in which they were taken.
 *
 * @param file     name of the file as the user wrote it
 * @param channels one in volts, one in amperes (or of unknown unit, with a doubt), perhaps more, all of one length
 * @param doubts   doubts about the file itself
 * @param evidence how the layout was read
 */
public record CurveTable(String file, List<Channel> channels, List<Doubt> doubts, List<Remark> evidence)
        implements Export {
    /** Checks that the channels are of one length. */
    public CurveTable {
        Objects.requireNonNull(file, "file");
        channels = List.copyOf(channels);
        doubts = List.copyOf(doubts);
        evidence = List.copyOf(evidence);
        if (channels.stream().map(c -> c.samples().size()).distinct().count() != 1) {
            throw new IllegalArgumentException("a curve needs channels of one length");
        }
    }
}
