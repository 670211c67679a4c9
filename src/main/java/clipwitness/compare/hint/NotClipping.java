package clipwitness.compare.hint;

import clipwitness.compare.judge.ItemValue;
import clipwitness.compare.result.Hint;
import clipwitness.job.State;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.HintCode;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The clippers look out of circuit: at the highest gain the distortion is under a fifth of what it was, and the level went up. */
final class NotClipping implements HintRule {
    private static final double SHARE = 0.2;

    @Override
    public List<Hint> look(Evidence evidence) {
        return evidence.atHighest(NotClipping::hint);
    }

    private static Optional<Hint> hint(State state, Evidence.Pair pair) {
        OptionalDouble before = pair.from().figure(WaveformQuantity.THD).value();
        OptionalDouble after = pair.to().figure(WaveformQuantity.THD).value();
        OptionalDouble level = pair.change(ItemValue.LEVEL);
        boolean looks = before.isPresent()
                && after.isPresent()
                && level.isPresent()
                && pair.from().isClipped()
                && after.getAsDouble() < SHARE * before.getAsDouble()
                && level.getAsDouble() > 0;
        if (!looks) {
            return Optional.empty();
        }
        return Optional.of(new Hint(
                HintCode.NOT_CLIPPING,
                Optional.of(state.name()),
                Remark.of(HintRemark.NOT_CLIPPING, Argument.name(state.label())),
                Remark.of(
                        HintRemark.NOT_CLIPPING_BY,
                        pair.place(),
                        Argument.plain(after.getAsDouble(), Unit.PERCENT, 2),
                        Argument.plain(before.getAsDouble(), Unit.PERCENT, 2),
                        Argument.decimals(level.getAsDouble(), Unit.DECIBEL, 1))));
    }
}
