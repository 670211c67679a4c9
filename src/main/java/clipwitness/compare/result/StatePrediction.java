package clipwitness.compare.result;

import clipwitness.capture.Condition;
import clipwitness.measure.CycleTrace;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the traced devices of a state predict under one condition.
 *
 * @param state     state
 * @param condition condition
 * @param source    how the clipper's source is known, a clause; empty where nothing is predicted
 * @param figures   figures, predicted and measured
 * @param cycle     predicted mean cycle, in V of the captured output; of arbitrary scale where the gain behind the clipper is not known
 * @param toScale   whether the cycle's volts are those of the captured output
 */
public record StatePrediction(
        String state,
        Condition condition,
        Optional<String> source,
        List<Prediction> figures,
        Optional<CycleTrace> cycle,
        boolean toScale) {
    /** Copies what it is given. */
    public StatePrediction {
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(condition, "condition");
        Objects.requireNonNull(source, "source");
        figures = List.copyOf(figures);
    }

    /** A figure that is no harmonic. */
    public Optional<Prediction> figure(String quantity) {
        return figures.stream()
                .filter(p -> p.order().isEmpty() && p.quantity().equals(quantity))
                .findFirst();
    }
}
