package clipwitness.measure.noise;

import clipwitness.capture.VerticalScale;
import clipwitness.capture.Waveform;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A record to be measured for noise.
 *
 * @param output           the record
 * @param mains            mains frequency in Hz, where the sheet states it; else 50 and 60 Hz are looked for
 * @param scale            vertical scale, where the preamble gives one
 * @param verticalAccuracy bound of the vertical accuracy, a ratio
 */
public record NoiseInput(
        Waveform output, OptionalDouble mains, Optional<VerticalScale> scale, double verticalAccuracy) {
    /** Checks that all parts are there. */
    public NoiseInput {
        Objects.requireNonNull(output, "output");
        Objects.requireNonNull(mains, "mains");
        Objects.requireNonNull(scale, "scale");
        if (!(verticalAccuracy >= 0)) {
            throw new IllegalArgumentException("verticalAccuracy must be 0 or more but is " + verticalAccuracy);
        }
    }
}
