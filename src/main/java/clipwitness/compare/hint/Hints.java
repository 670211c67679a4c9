package clipwitness.compare.hint;

import clipwitness.compare.result.Hint;
import clipwitness.job.State;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All hints of a job, in the order of the measurement book. A rule looks for one fault; here those that another one explains go, and those
 * about a state that the sheet itself calls unclipped.
 */
public final class Hints {
    private static final List<HintRule> RULES = List.of(
            new StatesSwapped(),
            new OneSideNotClipping(),
            new NotClipping(),
            new NoOutput(),
            new Inverted(),
            new LegMismatch(),
            new KnobOffset(),
            new BesideTheClipper());

    private static final List<String> ABOUT_LEGS = List.of("one-side-not-clipping", "not-clipping", "leg-mismatch");

    /** What else a fault makes a state look like. */
    private static final Map<String, List<String>> EXPLAINS = Map.of(
            "no-output",
                    List.of(
                            "states-swapped",
                            "one-side-not-clipping",
                            "not-clipping",
                            "inverted",
                            "leg-mismatch",
                            "knob-offset",
                            "beside-the-clipper"),
            "states-swapped",
                    List.of("one-side-not-clipping", "not-clipping", "inverted", "leg-mismatch", "knob-offset"),
            "one-side-not-clipping", List.of("leg-mismatch", "knob-offset"),
            "not-clipping", List.of("leg-mismatch", "knob-offset"),
            "inverted", List.of("leg-mismatch"),
            "beside-the-clipper", List.of("leg-mismatch", "knob-offset"));

    private Hints() {}

    /** The hints; one cause is one hint. */
    public static List<Hint> of(Evidence evidence) {
        List<Hint> all =
                RULES.stream().flatMap(r -> r.look(evidence).stream()).toList();
        return all.stream()
                .filter(h -> !isAboutTheUnclipped(h, evidence))
                .filter(h -> !isOld(h, all, evidence))
                .filter(h -> all.stream().noneMatch(o -> explains(o, h)))
                .toList();
    }

    private static boolean isAboutTheUnclipped(Hint hint, Evidence evidence) {
        Optional<String> unclipped = evidence.job().sheet().clipper().flatMap(c -> c.unclipped());
        return unclipped.isPresent() && hint.states().contains(unclipped.get());
    }

    /** Whether it is about the legs of a state that came so: one that is compared with nothing, or with one of which the same is true. */
    private static boolean isOld(Hint hint, List<Hint> all, Evidence evidence) {
        return ABOUT_LEGS.contains(hint.code())
                && evidence.job().sheet().states().stream()
                        .filter(s -> hint.states().contains(s.name()))
                        .allMatch(s -> cameSo(s, hint.code(), all));
    }

    private static boolean cameSo(State state, String code, List<Hint> all) {
        return state.against().isEmpty()
                || all.stream()
                        .anyMatch(h -> h.code().equals(code)
                                && h.states().contains(state.against().get()));
    }

    private static boolean explains(Hint other, Hint hint) {
        return EXPLAINS.getOrDefault(other.code(), List.of()).contains(hint.code())
                && other.states().containsAll(hint.states());
    }
}
