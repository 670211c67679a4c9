package clipwitness.measure.transfer;

import clipwitness.measure.wave.FittedWave;
import clipwitness.signal.WeightedPoints;
import java.util.function.UnaryOperator;

/** Where the samples of a capture lie over the input: the same for all outputs that are made of one by straightening. */
final class InputPlaces {
    private final AlignedInput aligned;
    private final boolean inverting;
    private final UnaryOperator<WeightedPoints> reordering;
    private Stretches stretches;

    /**
     * The inputs of a capture.
     *
     * @param output one of the outputs
     */
    InputPlaces(FittedWave output, FittedWave input) {
        this.aligned = new AlignedInput(output, input);
        this.inverting = LinearResponse.inverts(output, input);
        this.reordering = output.cycle().points().reordering(aligned::at);
    }

    /** The input over the phase. */
    AlignedInput aligned() {
        return aligned;
    }

    /** Whether it was turned over. */
    boolean inverting() {
        return inverting;
    }

    /** Folded samples of one of the outputs, over the input. */
    WeightedPoints over(WeightedPoints folded) {
        return reordering.apply(folded);
    }

    /** Stretches of points of one of the outputs, which all have the same noise. */
    Stretches stretches(WeightedPoints points, CurveNoise noise) {
        if (stretches == null) {
            stretches = new Stretches(points, aligned.amplitude(), noise);
        }
        return stretches;
    }
}
