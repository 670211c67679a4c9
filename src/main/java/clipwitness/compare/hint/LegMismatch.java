package clipwitness.compare.hint;

import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Hint;
import clipwitness.compare.result.StatePrediction;
import clipwitness.job.Clipper;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.reason.Argument;
import clipwitness.reason.HintCode;
import clipwitness.reason.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The wave is not the one that the traced devices make, while that of the state before is: at the highest gain, and at the next one where it
 * clips too, halves deviate as {@link ClipHalf} and {@link PathDeviation} say, in the same direction at both. Of a state before, of one without
 * clippers, and where the prediction is refused nothing is said. States with one deviation share a hint.
 */
final class LegMismatch implements HintRule {
    @Override
    public List<Hint> look(Evidence evidence) {
        List<List<Deviation>> found = new ArrayList<>();
        for (State state : evidence.job().sheet().states()) {
            if (mayBeNamed(evidence, state)) {
                deviation(evidence, state).ifPresent(d -> alike(found, d).add(d));
            }
        }
        return found.stream().map(LegMismatch::hint).toList();
    }

    /** The deviations that are alike, a new list of them where there are none yet. */
    private static List<Deviation> alike(List<List<Deviation>> found, Deviation deviation) {
        return found.stream()
                .filter(d -> d.get(0).isAlike(deviation))
                .findFirst()
                .orElseGet(() -> {
                    found.add(new ArrayList<>());
                    return found.get(found.size() - 1);
                });
    }

    private static boolean mayBeNamed(Evidence evidence, State state) {
        return state.role() != Role.BEFORE
                && !evidence.job().sheet().clipper().flatMap(Clipper::unclipped).equals(Optional.of(state.name()));
    }

    private static Hint hint(List<Deviation> alike) {
        Deviation first = alike.get(0);
        List<State> states = alike.stream().map(Deviation::state).toList();
        return new Hint(
                HintCode.LEG_MISMATCH,
                states.size() == 1 ? Optional.of(first.state().name()) : Optional.empty(),
                first.finding(labels(states)),
                first.evidence());
    }

    /** One or more states for a sentence about one. */
    static Argument labels(List<State> states) {
        return states.stream()
                .map(s -> Argument.name(s.called()))
                .reduce((first, second) -> Argument.word(Word.BOTH, first, second))
                .orElseThrow();
    }

    private static Optional<Deviation> deviation(Evidence evidence, State state) {
        List<StatePrediction> clipped = clipped(evidence, state);
        List<StatePrediction> before = clipped.stream()
                .flatMap(p -> predictedBefore(evidence, state, p).stream())
                .toList();
        if (clipped.isEmpty()) {
            return Optional.empty();
        }
        if (before.size() == clipped.size()) {
            return clipped.get(0).paths().isPresent()
                    ? PathDeviation.of(state, clipped, before)
                    : halves(state, clipped, before);
        }
        return namesNoPair(evidence, state) ? halvesAgainstMeasured(evidence, state, clipped) : Optional.empty();
    }

    private static boolean namesNoPair(Evidence evidence, State state) {
        return evidence.devices().predictions().stream()
                .noneMatch(p -> beforeOf(evidence, state).contains(p.state()));
    }

    /** What deviates from the prediction and from the state before as it was measured. */
    private static Optional<Deviation> halvesAgainstMeasured(
            Evidence evidence, State state, List<StatePrediction> clipped) {
        List<StatePrediction> before = new ArrayList<>();
        List<StatePrediction> change = new ArrayList<>();
        for (StatePrediction p : clipped) {
            Optional<StateAtCondition> then = beforeOf(evidence, state).stream()
                    .flatMap(n -> evidence.catalogue().at(n, p.condition()).stream())
                    .filter(StateAtCondition::isClipped)
                    .findFirst();
            Optional<StateAtCondition> now = evidence.catalogue().at(state.name(), p.condition());
            if (then.isPresent() && now.isPresent()) {
                before.add(MeasuredBefore.of(then.get()));
                change.add(MeasuredBefore.against(then.get(), now.get()));
            }
        }
        return before.size() < clipped.size()
                ? Optional.empty()
                : halves(state, clipped, before)
                        .filter(d ->
                                halves(state, change, before).filter(d::isAlike).isPresent());
    }

    private static Optional<Deviation> halves(
            State state, List<StatePrediction> clipped, List<StatePrediction> before) {
        if (clipped.stream().noneMatch(p -> ClipHalf.UPPER.isPredicted(p) || ClipHalf.LOWER.isPredicted(p))) {
            return RatioDeviation.of(state, clipped, before);
        }
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

    /** Names of the states before a state: the one it is compared with, else all. */
    private static List<String> beforeOf(Evidence evidence, State state) {
        return state.against().isPresent()
                ? state.against().stream().toList()
                : evidence.states(Role.BEFORE).stream().map(State::name).toList();
    }

    private static Optional<StatePrediction> predictedBefore(Evidence evidence, State state, StatePrediction at) {
        return beforeOf(evidence, state).stream()
                .flatMap(n -> predictions(evidence, n))
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
