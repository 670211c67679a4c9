package clipwitness.compare.hint;

import clipwitness.compare.result.StatePrediction;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import java.util.List;
import java.util.Optional;

/**
 * A wave that the traced devices and a clean path beside them do not make, while they make that of the state before: at every setting looked
 * at, more than 1.5 % of the swing remains, three times what noise leaves, whatever the devices' uncertainty, and three times what remains before; or the
 * clipped path comes higher or lower than before at the same setting by more than a quarter, and one and a half times its uncertainty.
 *
 * @param state  state that deviates
 * @param now    its fit at the highest gain
 * @param before the fit of the state before at the same condition
 * @param scale  1 where the clipped path comes higher than before, -1 where lower, 0 where the remainder tells
 */
record PathDeviation(State state, StatePrediction now, StatePrediction before, int scale) implements Deviation {
    private static final double LEAST_REMAINDER = 0.015;
    private static final double OVER_NOISE = 3;
    private static final double OVER_BEFORE = 3;
    private static final double LEAST_SCALE = Math.log(1.25);
    private static final double BEYOND = 1.5;

    /**
     * The deviation, where there is one.
     *
     * @param now    fits of the state, highest gain first
     * @param before those of the state before at the same conditions
     */
    static Optional<Deviation> of(State state, List<StatePrediction> now, List<StatePrediction> before) {
        boolean remains = true;
        int sum = 0;
        for (int i = 0; i < now.size(); i++) {
            StatePrediction.Paths a = now.get(i).paths().orElseThrow();
            Optional<StatePrediction.Paths> b = before.get(i).paths();
            if (b.isEmpty() || b.get().remainderOverSwing() > LEAST_REMAINDER) {
                return Optional.empty();
            }
            remains &= remains(a, b.get());
            sum += scale(a, b.get());
        }
        int scale = remains || Math.abs(sum) < now.size() ? 0 : Integer.signum(sum);
        return remains || scale != 0
                ? Optional.of(new PathDeviation(state, now.get(0), before.get(0), scale))
                : Optional.empty();
    }

    private static boolean remains(StatePrediction.Paths now, StatePrediction.Paths before) {
        return now.remainderOverSwing() > Math.max(LEAST_REMAINDER, OVER_BEFORE * before.remainderOverSwing())
                && now.remainderOverNoise() > OVER_NOISE;
    }

    private static int scale(StatePrediction.Paths now, StatePrediction.Paths before) {
        Measured.Value a = now.clipped().asValue().orElseThrow();
        Measured.Value b = before.clipped().asValue().orElseThrow();
        if (!(a.number() > 0 && b.number() > 0)) {
            return 0;
        }
        double more = Math.log(a.number() / b.number());
        double expanded = 2 * Math.hypot(a.relativeUncertainty(), b.relativeUncertainty());
        return Math.abs(more) > Math.max(LEAST_SCALE, BEYOND * expanded) ? (int) Math.signum(more) : 0;
    }

    @Override
    public Remark finding(Argument states) {
        return scale == 0
                ? Remark.of(HintRemark.PATHS_DEVIATE, states)
                : Remark.of(HintRemark.PATHS_SCALED, states, HalfDeviation.word(scale));
    }

    @Override
    public Remark evidence() {
        Argument place = Evidence.place(now.condition().gainPercent());
        StatePrediction.Paths a = now.paths().orElseThrow();
        StatePrediction.Paths b = before.paths().orElseThrow();
        return scale == 0
                ? Remark.of(
                        HintRemark.PATHS_DEVIATE_BY,
                        place,
                        percent(a.remainderOverSwing()),
                        percent(b.remainderOverSwing()))
                : Remark.of(HintRemark.PATHS_SCALED_BY, place, ratio(a.clipped()), ratio(b.clipped()));
    }

    private static Argument percent(double ratio) {
        return Argument.significant(100 * ratio, Unit.PERCENT, 2);
    }

    private static Argument ratio(Measured measured) {
        return Argument.significant(measured.value().orElseThrow(), Unit.ONE, 2);
    }
}
