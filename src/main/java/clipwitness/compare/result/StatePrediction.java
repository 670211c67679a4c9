package clipwitness.compare.result;

import clipwitness.capture.Condition;
import clipwitness.measure.CycleTrace;
import clipwitness.measure.Measured;
import clipwitness.reason.Remark;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the traced devices of a state predict under one condition.
 *
 * @param state     state
 * @param condition condition
 * @param source    how the clipper's source is known, empty where nothing is predicted
 * @param figures   figures, predicted and measured
 * @param cycle     predicted mean cycle, in V of the captured output; of arbitrary scale where the gain behind the clipper is not known
 * @param toScale   whether the cycle's volts are those of the captured output
 * @param paths     the two paths, where the sheet names a clean one beside the clipper or the wave shows it
 */
public record StatePrediction(
        String state,
        Condition condition,
        Optional<Remark> source,
        List<Prediction> figures,
        Optional<CycleTrace> cycle,
        boolean toScale,
        Optional<Paths> paths) {
    /** Copies what it is given. */
    public StatePrediction {
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(condition, "condition");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(paths, "paths");
        figures = List.copyOf(figures);
    }

    /** What is predicted of a clipper without clean path. */
    public StatePrediction(
            String state,
            Condition condition,
            Optional<Remark> source,
            List<Prediction> figures,
            Optional<CycleTrace> cycle,
            boolean toScale) {
        this(state, condition, source, figures, cycle, toScale, Optional.empty());
    }

    /**
     * The clipped and the clean path of a wave y = a v(G x) + b x + c, as fitted.
     *
     * @param gain               G, a ratio
     * @param clipped            a, a ratio
     * @param clean              b, a ratio
     * @param cleanShare         share of the output's fundamental that comes by the clean path, a ratio
     * @param remainderOverSwing root mean square of what the fit leaves over that of the swing
     * @param remainderOverNoise the same over what noise leaves; no uncertainty of the devices takes up what counts here
     * @param stated             whether the sheet names a clean path; where it does not, the wave shows one
     */
    public record Paths(
            Measured gain,
            Measured clipped,
            Measured clean,
            Measured cleanShare,
            double remainderOverSwing,
            double remainderOverNoise,
            boolean stated) {}

    /** The same with the paths that the wave shows. */
    public StatePrediction with(Paths shown) {
        return new StatePrediction(state, condition, source, figures, cycle, toScale, Optional.of(shown));
    }

    /** A figure that is no harmonic. */
    public Optional<Prediction> figure(String quantity) {
        return figures.stream()
                .filter(p -> p.order().isEmpty() && p.quantity().equals(quantity))
                .findFirst();
    }
}
