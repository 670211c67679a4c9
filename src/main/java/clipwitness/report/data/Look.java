package clipwitness.report.data;

import clipwitness.capture.Channel;
import clipwitness.capture.Export;
import clipwitness.measure.WaveformResult;
import clipwitness.reason.Doubt;
import java.util.List;
import java.util.Optional;

/**
 * An export, looked at: what it holds and whether it is fit to measure.
 *
 * @param export   the export
 * @param channels its channels, measured where they are periodic enough
 * @param doubts   every doubt, the file's and the measuring's
 */
public record Look(Export export, List<ChannelLook> channels, List<Doubt> doubts) {
    /** Copies what it is given. */
    public Look {
        channels = List.copyOf(channels);
        doubts = List.copyOf(doubts);
    }

    /**
     * One channel, looked at.
     *
     * @param channel  the channel
     * @param waveform what was measured, where the channel is a wave
     */
    public record ChannelLook(Channel channel, Optional<WaveformResult> waveform) {}
}
