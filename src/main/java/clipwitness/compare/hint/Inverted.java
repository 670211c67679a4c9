package clipwitness.compare.hint;

import clipwitness.compare.judge.ItemValue;
import clipwitness.compare.result.Hint;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.measure.pair.NullDepth;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The wave is upside down: the null improves by 6 dB and more when one wave is turned over. In a changed state that may be its new pair, so
 * there the phase at the test tone has to say it too.
 */
final class Inverted implements HintRule {
    private static final String CODE = "inverted";
    private static final double BETTER_DB = 6;
    private static final double GOOD_NULL_DB = -20;
    private static final double QUARTER_TURN = 90;

    @Override
    public List<Hint> look(Evidence evidence) {
        return evidence.atHighest(Inverted::hint);
    }

    private static Optional<Hint> hint(State state, Evidence.Pair pair) {
        OptionalDouble phase = pair.change(ItemValue.POLARITY);
        boolean turned = phase.isPresent() && Math.abs(phase.getAsDouble()) > QUARTER_TURN;
        OptionalDouble upright = depth(pair, false);
        OptionalDouble over = depth(pair, true);
        boolean nulls = upright.isPresent()
                && over.isPresent()
                && over.getAsDouble() < Math.min(GOOD_NULL_DB, upright.getAsDouble() - BETTER_DB);
        if (!turned && (!nulls || state.role() != Role.UNCHANGED)) {
            return Optional.empty();
        }
        return Optional.of(new Hint(
                CODE,
                Optional.of(state.name()),
                turned
                        ? "“" + state.label()
                                + "” turns the wave over, which the unit did not before: look for a stage wired the other way"
                                + " round, or probes exchanged."
                        : "The wave of “" + state.label()
                                + "” is upside down: look for a pair fitted the other way round, or a stage that inverts.",
                pair.place() + evidence(phase, turned, upright, over)));
    }

    private static String evidence(OptionalDouble phase, boolean turned, OptionalDouble upright, OptionalDouble over) {
        return turned
                ? String.format(Locale.ROOT, " the phase moved by %.0f°", phase.getAsDouble())
                : String.format(
                        Locale.ROOT,
                        " the null is %.1f dB, and %.1f dB with one wave turned over",
                        upright.getAsDouble(),
                        over.getAsDouble());
    }

    private static OptionalDouble depth(Evidence.Pair pair, boolean turned) {
        return NullDepth.alignment(pair.from().first(), pair.to().first(), turned)
                .map(a -> a.depth().value())
                .orElse(OptionalDouble.empty());
    }
}
