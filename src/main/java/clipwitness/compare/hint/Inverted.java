package clipwitness.compare.hint;

import clipwitness.compare.judge.ItemValue;
import clipwitness.compare.result.Hint;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.measure.pair.NullDepth;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.HintCode;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The wave is upside down: the null improves by 6 dB and more when one wave is turned over. In a changed state that may be its new pair, so
 * there the phase at the test tone has to say it too.
 */
final class Inverted implements HintRule {
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
                HintCode.INVERTED,
                Optional.of(state.name()),
                Remark.of(turned ? HintRemark.INVERTED : HintRemark.UPSIDE_DOWN, Argument.name(state.called())),
                turned ? byPhase(pair, phase) : byNull(pair, upright, over)));
    }

    private static Remark byPhase(Evidence.Pair pair, OptionalDouble phase) {
        return Remark.of(
                HintRemark.INVERTED_BY_PHASE, pair.place(), Argument.decimals(phase.getAsDouble(), Unit.DEGREE, 0));
    }

    private static Remark byNull(Evidence.Pair pair, OptionalDouble upright, OptionalDouble over) {
        return Remark.of(
                HintRemark.INVERTED_BY_NULL,
                pair.place(),
                Argument.decimals(upright.getAsDouble(), Unit.DECIBEL, 1),
                Argument.decimals(over.getAsDouble(), Unit.DECIBEL, 1));
    }

    private static OptionalDouble depth(Evidence.Pair pair, boolean turned) {
        return NullDepth.alignment(pair.from().first(), pair.to().first(), turned)
                .map(a -> a.depth().value())
                .orElse(OptionalDouble.empty());
    }
}
