package clipwitness.compare.result;

import clipwitness.measure.match.MatchedPair;
import clipwitness.measure.match.Pairing;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The traced devices of a job, and what they predict.
 *
 * @param traced      devices in the table's order
 * @param pairing     the best pairs among them
 * @param fitted      how well the two legs of a state match, by state, where each leg is one device
 * @param combined    current through the pair of a state, by state, where all its devices were traced
 * @param predictions predicted waves, states in the sheet's order
 */
public record Devices(
        List<TracedDevice> traced,
        Pairing pairing,
        Map<String, MatchedPair> fitted,
        Map<String, PairCurve> combined,
        List<StatePrediction> predictions) {
    /** No device was traced. */
    public static final Devices NONE =
            new Devices(List.of(), new Pairing(List.of(), List.of()), Map.of(), Map.of(), List.of());

    /** Copies what it is given. */
    public Devices {
        Objects.requireNonNull(pairing, "pairing");
        traced = List.copyOf(traced);
        fitted = Collections.unmodifiableMap(new LinkedHashMap<>(fitted));
        combined = Collections.unmodifiableMap(new LinkedHashMap<>(combined));
        predictions = List.copyOf(predictions);
    }

    /** Of each state with predictions, in their order, the one at the highest gain; the first where several have it. */
    public List<StatePrediction> highest() {
        Map<String, StatePrediction> highest = new LinkedHashMap<>();
        predictions.forEach(p -> highest.merge(p.state(), p, (a, b) -> gain(b) > gain(a) ? b : a));
        return List.copyOf(highest.values());
    }

    private static double gain(StatePrediction prediction) {
        return prediction.condition().gainPercent().orElse(-1);
    }
}
