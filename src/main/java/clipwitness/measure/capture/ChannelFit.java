package clipwitness.measure.capture;

import clipwitness.capture.Samples;
import clipwitness.measure.wave.FittedWave;
import clipwitness.signal.JointFit;
import java.util.List;

/**
 * All channels of a record fitted, the output with its mean cycle.
 *
 * @param joint  fit of the channels, the output first
 * @param output the output
 */
record ChannelFit(JointFit joint, FittedWave output) {
    /** Fits channels, the output first. */
    static ChannelFit of(List<Samples> channels, double start, int harmonics) {
        JointFit joint = JointFit.of(channels, start, harmonics);
        double origin = -0.25 - joint.channels().get(0).phase(1) / (2 * Math.PI);
        return new ChannelFit(
                joint, FittedWave.of(channels.get(0), joint.channels().get(0), origin));
    }

    /** The input, which must be the second of the channels, with its mean cycle. */
    FittedWave input(List<Samples> channels) {
        return FittedWave.of(channels.get(1), joint.channels().get(1), output.origin());
    }
}
