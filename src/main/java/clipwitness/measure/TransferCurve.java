package clipwitness.measure;

import clipwitness.capture.Samples;
import java.util.Objects;
import java.util.Optional;

/**
 * Output against input over the mean cycle, delay taken out, the two branches averaged.
 *
 * @param input     input from its mean, V, ascending
 * @param output    output from its value at the input's mean, V, an inverting unit turned over; straightened where that succeeded
 * @param gap       largest distance of the two branches over the output's swing, a ratio
 * @param inverting whether the unit was turned over
 * @param loop      the branches as captured, where they part by more than a curve may
 */
public record TransferCurve(Samples input, Samples output, double gap, boolean inverting, Optional<TransferLoop> loop) {
    /** Checks that both axes are of one length. */
    public TransferCurve {
        Objects.requireNonNull(input, "input");
        Objects.requireNonNull(output, "output");
        Objects.requireNonNull(loop, "loop");
        if (input.size() != output.size()) {
            throw new IllegalArgumentException("a curve needs as many inputs as outputs");
        }
    }

    /** A curve whose branches lie on one another. */
    public TransferCurve(Samples input, Samples output, double gap, boolean inverting) {
        this(input, output, gap, inverting, Optional.empty());
    }

    /** The filters that were taken off to straighten the curve, where that was needed and succeeded. */
    public Optional<FilterCorners> straightened() {
        return loop.flatMap(TransferLoop::straightened);
    }

    /** Whether output follows input at each instant, as captured or after it was straightened. */
    public boolean follows() {
        return loop.isEmpty() || straightened().isPresent();
    }
}
