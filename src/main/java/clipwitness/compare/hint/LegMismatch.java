package clipwitness.compare.hint;

import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Hint;
import clipwitness.compare.result.StatePrediction;
import clipwitness.job.Clipper;
import clipwitness.job.Role;
import clipwitness.job.State;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The wave is not the one that the traced devices make, while that of the state before is: at the highest gain, and at the next one where it
 * clips too, halves deviate as {@link ClipHalf} and {@link PathDeviation} say, in the same direction at both. Of a state before, of one without
 * clippers, and where the prediction is refused nothing is said. States with one deviation share a hint.
 */
final class LegMismatch implements HintRule {
    private static final String CODE = "leg-mismatch";

    @Override
    public List<Hint> look(Evidence evidence) {
        Map<String, List<Deviation>> found = new LinkedHashMap<>();
        for (State state : evidence.job().sheet().states()) {
            if (mayBeNamed(evidence, state)) {
                deviation(evidence, state)
                        .ifPresent(w -> found.computeIfAbsent(w.finding(), k -> new ArrayList<>())
                                .add(w));
            }
        }
        return found.values().stream().map(LegMismatch::hint).toList();
    }

    private static boolean mayBeNamed(Evidence evidence, State state) {
        return state.role() != Role.BEFORE
                && !evidence.job().sheet().clipper().flatMap(Clipper::unclipped).equals(Optional.of(state.name()));
    }

    private static Hint hint(List<Deviation> alike) {
        Optional<String> state =
                alike.size() == 1 ? Optional.of(alike.get(0).state().name()) : Optional.empty();
        return new Hint(
                CODE,
                state,
                "In "
                        + alike.stream().map(w -> "“" + w.state().label() + "”").collect(Collectors.joining(" and "))
                        + " " + alike.get(0).finding(),
                alike.get(0).evidence());
    }

    private static Optional<Deviation> deviation(Evidence evidence, State state) {
        List<StatePrediction> clipped = clipped(evidence, state);
        List<StatePrediction> before = clipped.stream()
                .flatMap(p -> before(evidence, state, p).stream())
                .toList();
        if (clipped.isEmpty() || before.size() < clipped.size()) {
            return Optional.empty();
        }
        return clipped.get(0).paths().isPresent()
                ? PathDeviation.of(state, clipped, before)
                : halves(state, clipped, before);
    }

    private static Optional<Deviation> halves(
            State state, List<StatePrediction> clipped, List<StatePrediction> before) {
        int upper = direction(ClipHalf.UPPER, clipped, before);
        int lower = direction(ClipHalf.LOWER, clipped, before);
        return upper == 0 && lower == 0
                ? Optional.empty()
                : Optional.of(new HalfDeviation(state, clipped.get(0), upper, lower));
    }

    /** Of the settings at which a state clips and is predicted the two with the highest gain, the highest first. */
    private static List<StatePrediction> clipped(Evidence evidence, State state) {
        return predictions(evidence, state.name())
                .filter(p -> isClipped(evidence, p))
                .sorted(Comparator.comparingDouble((StatePrediction p) ->
                                p.condition().gainPercent().orElse(0))
                        .reversed())
                .limit(2)
                .toList();
    }

    /** Predictions that were not refused. */
    private static Stream<StatePrediction> predictions(Evidence evidence, String state) {
        return evidence.devices().predictions().stream()
                .filter(p -> p.state().equals(state) && p.source().isPresent());
    }

    private static boolean isClipped(Evidence evidence, StatePrediction prediction) {
        return evidence.catalogue()
                .at(prediction.state(), prediction.condition())
                .filter(StateAtCondition::isClipped)
                .isPresent();
    }

    private static Optional<StatePrediction> before(Evidence evidence, State state, StatePrediction at) {
        Stream<String> names = state.against().isPresent()
                ? state.against().stream()
                : evidence.states(Role.BEFORE).stream().map(State::name);
        return names.flatMap(n -> predictions(evidence, n))
                .filter(p -> p.condition().equals(at.condition()))
                .findFirst();
    }

    private static int direction(ClipHalf half, List<StatePrediction> clipped, List<StatePrediction> before) {
        int first = half.direction(clipped.get(0), before.get(0));
        boolean alike = true;
        for (int i = 1; i < clipped.size(); i++) {
            alike &= half.direction(clipped.get(i), before.get(i)) == first;
        }
        return alike ? first : 0;
    }
}
