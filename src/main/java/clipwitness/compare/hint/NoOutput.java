package clipwitness.compare.hint;

import clipwitness.compare.judge.ItemValue;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Hint;
import clipwitness.job.State;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.DoubtCode;
import clipwitness.reason.HintCode;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Nothing comes out where something did before: at every setting the test tone is missing, or 40 dB and more down. */
final class NoOutput implements HintRule {
    private static final double SILENT_DB = -40;

    @Override
    public List<Hint> look(Evidence evidence) {
        return evidence.compared().stream()
                .flatMap(s -> hint(s, evidence.pairs(s)).stream())
                .toList();
    }

    private static Optional<Hint> hint(State state, List<Evidence.Pair> pairs) {
        if (pairs.isEmpty() || !pairs.stream().allMatch(NoOutput::isSilent)) {
            return Optional.empty();
        }
        Evidence.Pair first = pairs.get(0);
        OptionalDouble level = first.change(ItemValue.LEVEL);
        return Optional.of(new Hint(
                HintCode.NO_OUTPUT,
                Optional.of(state.name()),
                Remark.of(HintRemark.NO_OUTPUT, Argument.name(state.called())),
                level.isPresent()
                        ? Remark.of(
                                HintRemark.NO_OUTPUT_BY_LEVEL,
                                first.place(),
                                Argument.decimals(-level.getAsDouble(), Unit.DECIBEL, 0))
                        : Remark.of(HintRemark.NO_OUTPUT_BY_TONE, first.place())));
    }

    private static boolean isSilent(Evidence.Pair pair) {
        OptionalDouble level = pair.change(ItemValue.LEVEL);
        return level.isPresent() ? level.getAsDouble() < SILENT_DB : hasTone(pair.from()) && !hasTone(pair.to());
    }

    private static boolean hasTone(StateAtCondition setting) {
        return setting.first().doubts().stream().noneMatch(d -> d.code() == DoubtCode.NO_FUNDAMENTAL && d.refuses());
    }
}
