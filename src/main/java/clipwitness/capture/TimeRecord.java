package clipwitness.capture;

import clipwitness.reason.Doubt;
import clipwitness.reason.Remark;
import java.util.List;
import java.util.Objects;

/**
 * A record over time, sampled at a steady rate.
 *
 * @param file           name of the file as the user wrote it
 * @param start          time of the first sample in s, 0 where the file has none
 * @param sampleInterval in s, above 0
 * @param channels       at least one, all of one length
 * @param doubts         doubts about the file itself
 * @param evidence       how the layout was read
 */
public record TimeRecord(
        String file,
        double start,
        double sampleInterval,
        List<Channel> channels,
        List<Doubt> doubts,
        List<Remark> evidence)
        implements Export {
    /** Checks the interval, and that the channels are of one length. */
    public TimeRecord {
        Objects.requireNonNull(file, "file");
        channels = List.copyOf(channels);
        doubts = List.copyOf(doubts);
        evidence = List.copyOf(evidence);
        if (!(sampleInterval > 0 && sampleInterval < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("sampleInterval must be finite and above 0 s but is " + sampleInterval);
        }
        if (channels.stream().map(c -> c.samples().size()).distinct().count() != 1) {
            throw new IllegalArgumentException("a record needs channels of one length");
        }
    }

    /** Samples a second, in Hz. */
    public double sampleRate() {
        return 1 / sampleInterval;
    }
}
