package clipwitness.measure.response;

import clipwitness.measure.Measured;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The response at one frequency.
 *
 * @param frequency Hz
 * @param gain      output over input, dB
 * @param phase     output minus input, degrees, -180 to 180, negative is lag
 * @param coherence share of the output's power that the input explains, 0 to 1; empty for a steady sine
 */
public record ResponsePoint(double frequency, Measured gain, Measured phase, OptionalDouble coherence) {
    /** Checks that all parts are there. */
    public ResponsePoint {
        Objects.requireNonNull(gain, "gain");
        Objects.requireNonNull(phase, "phase");
        Objects.requireNonNull(coherence, "coherence");
    }
}
