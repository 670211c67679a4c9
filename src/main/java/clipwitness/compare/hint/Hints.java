package clipwitness.compare.hint;

import clipwitness.compare.result.Hint;
import clipwitness.job.State;
import clipwitness.reason.HintCode;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * All hints of a job, in the order of the measurement book. A rule looks for one fault; here those that another one explains are removed, and those
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
            new ExtraHum(),
            new CleanPath(),
            new KnobOffset(),
            new BesideTheClipper());

    private static final Set<HintCode> ABOUT_LEGS =
            EnumSet.of(HintCode.ONE_SIDE_NOT_CLIPPING, HintCode.NOT_CLIPPING, HintCode.LEG_MISMATCH);

    /** What else a fault makes a state look like. */
    private static final Map<HintCode, List<HintCode>> EXPLAINS = Map.of(
            HintCode.NO_OUTPUT,
                    List.of(
                            HintCode.STATES_SWAPPED,
                            HintCode.ONE_SIDE_NOT_CLIPPING,
                            HintCode.NOT_CLIPPING,
                            HintCode.INVERTED,
                            HintCode.LEG_MISMATCH,
                            HintCode.KNOB_OFFSET,
                            HintCode.BESIDE_THE_CLIPPER),
            HintCode.STATES_SWAPPED,
                    List.of(
                            HintCode.ONE_SIDE_NOT_CLIPPING,
                            HintCode.NOT_CLIPPING,
                            HintCode.INVERTED,
                            HintCode.LEG_MISMATCH,
                            HintCode.KNOB_OFFSET),
            HintCode.ONE_SIDE_NOT_CLIPPING, List.of(HintCode.LEG_MISMATCH, HintCode.KNOB_OFFSET),
            HintCode.NOT_CLIPPING, List.of(HintCode.LEG_MISMATCH, HintCode.KNOB_OFFSET),
            HintCode.INVERTED, List.of(HintCode.LEG_MISMATCH),
            HintCode.BESIDE_THE_CLIPPER, List.of(HintCode.LEG_MISMATCH, HintCode.KNOB_OFFSET));

    private Hints() {}

    /** The hints; one cause is one hint. */
    public static List<Hint> of(Evidence evidence) {
        List<Hint> all = RULES.stream().flatMap(r -> r.look(evidence).stream()).toList();
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

    private static boolean cameSo(State state, HintCode code, List<Hint> all) {
        return state.against().isEmpty()
                || all.stream()
                        .anyMatch(h -> h.code() == code
                                && h.states().contains(state.against().get()));
    }

    private static boolean explains(Hint other, Hint hint) {
        return EXPLAINS.getOrDefault(other.code(), List.of()).contains(hint.code())
                && other.states().containsAll(hint.states());
    }
}
