package clipwitness.compare.hint;

import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import clipwitness.reason.Word;
import java.util.List;
import java.util.stream.Stream;

/**
 * Halves that clip higher or lower than predicted.
 *
 * @param state   state that deviates
 * @param highest its prediction at the highest gain
 * @param upper   1 where the upper half clips higher than predicted, -1 where lower, 0 where as predicted
 * @param lower   the same of the lower half
 */
record HalfDeviation(State state, StatePrediction highest, int upper, int lower) implements Deviation {
    private static final int DIGITS = 3;

    @Override
    public Remark finding(Argument states) {
        if (upper == 0 || lower == 0) {
            return Remark.of(
                    upper + lower > 0 ? HintRemark.LEG_HIGHER : HintRemark.LEG_LOWER,
                    states,
                    (upper != 0 ? ClipHalf.UPPER : ClipHalf.LOWER).half());
        }
        return upper == lower
                ? Remark.of(HintRemark.LEGS_ALIKE, states, word(upper))
                : Remark.of(
                        HintRemark.LEGS_APART,
                        states,
                        ClipHalf.UPPER.half(),
                        word(upper),
                        ClipHalf.LOWER.half(),
                        word(lower));
    }

    /** Higher or lower. */
    static Argument word(int direction) {
        return Argument.word(direction > 0 ? Word.HIGHER : Word.LOWER);
    }

    @Override
    public Remark evidence() {
        Argument place = Evidence.place(highest.condition().gainPercent());
        List<Argument> levels = Stream.of(ClipHalf.UPPER, ClipHalf.LOWER)
                .filter(h -> (h == ClipHalf.UPPER ? upper : lower) != 0)
                .map(this::level)
                .toList();
        Remark evidence = levels.size() == 1
                ? Remark.of(HintRemark.LEG_BY, place, levels.get(0))
                : Remark.of(HintRemark.LEGS_BY, place, levels.get(0), levels.get(1));
        return highest.source()
                .map(s -> Remark.of(HintRemark.LEG_BY_SOURCE, Argument.inner(evidence), Argument.inner(s)))
                .orElse(evidence);
    }

    private Argument level(ClipHalf half) {
        Prediction figure = half.told(highest).orElseThrow();
        double expanded = figure.expandedUncertainty().orElseThrow();
        return Argument.word(
                HintRemark.LEG_LEVEL,
                half.level(highest),
                volts(figure.measured(), expanded),
                volts(figure.predicted(), expanded),
                Argument.prefixed(expanded, Unit.VOLT, 2));
    }

    private static Argument volts(Measured measured, double expanded) {
        double value = measured.value().orElseThrow();
        return Argument.prefixed(value, Unit.VOLT, NumberText.digits(value, expanded, DIGITS));
    }
}
