package clipwitness.compare.hint;

import clipwitness.compare.result.Hint;
import java.util.List;

/** All hints of a job, in the order of the measurement book. */
public final class Hints {
    private static final List<HintRule> RULES = List.of(
            new StatesSwapped(),
            new OneSideNotClipping(),
            new NotClipping(),
            new NoOutput(),
            new Inverted(),
            new LegMismatch(),
            new ExtraHum(),
            new KnobOffset());

    private Hints() {}

    public static List<Hint> of(Evidence evidence) {
        return RULES.stream().flatMap(r -> r.look(evidence).stream()).toList();
    }
}
