package clipwitness.measure;

import clipwitness.capture.Samples;
import java.util.Objects;

/**
 * Output against input over the mean cycle, delay taken out, the two branches averaged.
 *
 * @param input     input from its mean, V, ascending
 * @param output    output from its value at the input's mean, V, an inverting unit turned over
 * @param gap       largest distance of the two branches over the output's swing, a ratio
 * @param inverting whether the unit was turned over
 */
public record TransferCurve(Samples input, Samples output, double gap, boolean inverting) {
    /** Checks that both axes are of one length. */
    public TransferCurve {
        Objects.requireNonNull(input, "input");
        Objects.requireNonNull(output, "output");
        if (input.size() != output.size()) {
            throw new IllegalArgumentException("a curve needs as many inputs as outputs");
        }
    }
}
