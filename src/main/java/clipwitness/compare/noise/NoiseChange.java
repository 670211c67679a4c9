package clipwitness.compare.noise;

import clipwitness.compare.judge.Change;
import clipwitness.compare.judge.RangeChange;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.measure.Budget;
import clipwitness.measure.Contribution;
import clipwitness.measure.LevelChange;
import clipwitness.measure.LevelSide;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.noise.NoiseFigure;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.FigureReason;
import clipwitness.reason.FrameReason;
import clipwitness.reason.Reason;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The increase of a figure from one state to another, dB, with its budget.
 *
 * @param value the increase
 * @param stays share of the first state in the variance of each source
 */
record NoiseChange(Measured value, Map<Source, Double> stays) {
    /** Change of a figure of the noise at the output, over the band that both captures have. */
    static NoiseChange of(NoisePair pair, NoiseFigure figure, InputGain gain) {
        if (pair.from().band().isEmpty() || pair.to().band().isEmpty()) {
            NoiseAtCondition refused = pair.from().band().isEmpty() ? pair.from() : pair.to();
            return refused(refused, refused.figure(figure).reason().orElseThrow());
        }
        var band = pair.from().band().get().and(pair.to().band().get());
        return between(pair, pair.from().level(figure, band), pair.to().level(figure, band), gain);
    }

    /** The same, both referred to the input; empty where a gain is not known. */
    static Optional<NoiseChange> atInput(NoisePair pair, NoiseFigure figure, InputGain gain) {
        Optional<Measured.Value> before =
                gain.of(pair.from().state(), pair.from().condition());
        Optional<Measured.Value> after = gain.of(pair.to().state(), pair.to().condition());
        NoiseChange atOutput = of(pair, figure, gain);
        Optional<Measured.Value> change = atOutput.value.asValue();
        if (before.isEmpty() || after.isEmpty() || change.isEmpty()) {
            return Optional.empty();
        }
        List<Contribution> parts = new ArrayList<>(change.get().budget());
        parts.addAll(before.get().without(Source.VERTICAL_ACCURACY).budget());
        parts.addAll(after.get().without(Source.VERTICAL_ACCURACY).budget());
        StateAtCondition from =
                gain.wave(pair.from().state(), pair.from().condition()).orElseThrow();
        StateAtCondition to =
                gain.wave(pair.to().state(), pair.to().condition()).orElseThrow();
        RangeChange.ofLevel(from, to).ifPresent(parts::add);
        return Optional.of(new NoiseChange(
                new Measured.Value(
                        change.get().number()
                                - after.get().number()
                                + before.get().number(),
                        Unit.DECIBEL,
                        Budget.bySource(parts),
                        change.get().isUpperBound()),
                atOutput.stays));
    }

    /** Change of the root-sum-square of the lines of the mains that stand out in either state; there must be one. */
    static NoiseChange ofHum(NoisePair pair, InputGain gain) {
        return between(pair, level(pair, pair.from()), level(pair, pair.to()), gain);
    }

    private static Measured level(NoisePair pair, NoiseAtCondition setting) {
        return setting.humRefused()
                .<Measured>map(reason -> Measured.refused(Unit.DECIBEL, reason))
                .orElseGet(() -> setting.power(pair.lines()).levelOver(1, 0, Unit.DECIBEL, FigureReason.LINE_HIDDEN));
    }

    private static NoiseChange between(NoisePair pair, Measured before, Measured after, InputGain gain) {
        if (before.asValue().isEmpty()) {
            return refused(pair.from(), before.reason().orElseThrow());
        }
        if (after.asValue().isEmpty()) {
            return refused(pair.to(), after.reason().orElseThrow());
        }
        Measured.Value from = before.asValue().get();
        Measured.Value to = after.asValue().get();
        List<Contribution> first = parts(from, pair.from(), gain);
        List<Contribution> second = parts(to, pair.to(), gain);
        Measured.Value change = LevelChange.of(
                LevelSide.ofFirstOrder(from, gain.control(pair.from())),
                LevelSide.ofFirstOrder(to, gain.control(pair.to())),
                range(pair).stream().toList());
        return new NoiseChange(to.isUpperBound() ? change.asUpperBound() : change, Change.shares(first, second));
    }

    private static List<Contribution> parts(Measured.Value level, NoiseAtCondition setting, InputGain gain) {
        List<Contribution> parts = new ArrayList<>(level.budget());
        parts.addAll(gain.control(setting));
        return parts;
    }

    /** The instrument's vertical accuracy cancels at one range of one instrument. */
    private static Optional<Contribution> range(NoisePair pair) {
        boolean same = !pair.from().range().differsFrom(pair.to().range())
                && instrument(pair.from()).equals(instrument(pair.to()));
        double relative = Math.hypot(pair.from().verticalAccuracy(), pair.to().verticalAccuracy());
        return same || relative == 0
                ? Optional.empty()
                : Optional.of(new Contribution(Source.VERTICAL_ACCURACY, Decibels.PER_RELATIVE_AMPLITUDE * relative));
    }

    private static Optional<String> instrument(NoiseAtCondition setting) {
        return setting.replicates().get(0).row().instrument();
    }

    private static NoiseChange refused(NoiseAtCondition setting, Reason reason) {
        Reason framed = Reason.of(FrameReason.IN_STATE, setting.name(), Argument.inner(reason));
        return new NoiseChange(Measured.refused(Unit.DECIBEL, framed), Map.of());
    }
}
