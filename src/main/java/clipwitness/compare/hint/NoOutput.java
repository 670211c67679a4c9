package clipwitness.compare.hint;

import clipwitness.capture.DoubtCode;
import clipwitness.capture.Severity;
import clipwitness.compare.judge.ItemValue;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Hint;
import clipwitness.job.State;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Nothing comes out where something did before: at every setting the test tone is missing, or 40 dB and more down. */
final class NoOutput implements HintRule {
    private static final String CODE = "no-output";
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
                CODE,
                Optional.of(state.name()),
                "“" + state.label()
                        + "” gives no output where the unit did before: look for a broken connection, a switch without contact,"
                        + " a missing supply, or a probe in the wrong place.",
                first.place()
                        + (level.isPresent()
                                ? String.format(Locale.ROOT, " the level is %.0f dB lower", -level.getAsDouble())
                                : " the test tone does not stand out of the noise")));
    }

    private static boolean isSilent(Evidence.Pair pair) {
        OptionalDouble level = pair.change(ItemValue.LEVEL);
        return level.isPresent() ? level.getAsDouble() < SILENT_DB : hasTone(pair.from()) && !hasTone(pair.to());
    }

    private static boolean hasTone(StateAtCondition setting) {
        return setting.first().doubts().stream()
                .noneMatch(d -> d.code() == DoubtCode.NO_FUNDAMENTAL && d.severity() == Severity.REFUSAL);
    }
}
