package clipwitness.compare.hint;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Hint;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.FigureReason;
import clipwitness.reason.HintCode;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import clipwitness.reason.Word;
import java.util.List;
import java.util.Optional;

/**
 * One half of the wave goes on rising where the other clips: the onset is not reached on one side while it is on the other, at the
 * highest gain captured, or the ratio of the clip levels grows by at least 1.5 times from the middle to the highest gain (an open leg
 * 4.3 times, a one-to-two pair 1.13). Without an input channel the peaks stand for the clip levels, and only of unchanged states.
 */
final class OneSideNotClipping implements HintRule {
    private static final double GROWTH = 1.5;

    @Override
    public List<Hint> look(Evidence evidence) {
        return evidence.job().sheet().states().stream()
                .flatMap(s -> hint(evidence, s).stream())
                .toList();
    }

    private static Optional<Hint> hint(Evidence evidence, State state) {
        return evidence.highest(state.name()).flatMap(top -> onsets(state, top).or(() -> growth(evidence, state, top)));
    }

    private static Optional<Hint> onsets(State state, StateAtCondition top) {
        Measured up = top.figure(WaveformQuantity.ONSET_UP);
        Measured down = top.figure(WaveformQuantity.ONSET_DOWN);
        if (up.value().isPresent() == down.value().isPresent() || top.first().refused()) {
            return Optional.empty();
        }
        Word missing = up.value().isPresent() ? Word.LOWER_HALF : Word.UPPER_HALF;
        Measured refused = up.value().isPresent() ? down : up;
        if (refused.reason().filter(r -> r.is(FigureReason.NOT_REACHED)).isEmpty()) {
            return Optional.empty();
        }
        Argument gain = Evidence.gain(Catalogue.gain(top));
        return Optional.of(hint(state, missing, Remark.of(HintRemark.ONE_SIDE_BY_ONSET, gain, Argument.word(missing))));
    }

    private static Optional<Hint> growth(Evidence evidence, State state, StateAtCondition top) {
        Optional<StateAtCondition> middle = middle(evidence.catalogue().alongGain(top));
        if (middle.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> low = ratio(state, middle.get());
        Optional<Double> high = ratio(state, top);
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        double growth = high.get() / low.get();
        if (growth < GROWTH && growth > 1 / GROWTH) {
            return Optional.empty();
        }
        return Optional.of(hint(
                state,
                growth > 1 ? Word.UPPER_HALF : Word.LOWER_HALF,
                Remark.of(
                        HintRemark.ONE_SIDE_BY_LEVELS,
                        Argument.decimals(low.get(), Unit.ONE, 2),
                        Evidence.gain(Catalogue.gain(middle.get())),
                        Argument.decimals(high.get(), Unit.ONE, 2),
                        Evidence.gain(Catalogue.gain(top)))));
    }

    private static Optional<StateAtCondition> middle(List<StateAtCondition> along) {
        if (along.size() < 2) {
            return Optional.empty();
        }
        double low = Catalogue.gain(along.get(0));
        double high = Catalogue.gain(along.get(along.size() - 1));
        return along.subList(0, along.size() - 1).stream()
                .reduce((a, b) -> distance(b, low, high) < distance(a, low, high) ? b : a);
    }

    private static double distance(StateAtCondition s, double low, double high) {
        return Math.abs(Catalogue.gain(s) - (low + high) / 2);
    }

    private static Optional<Double> ratio(State state, StateAtCondition setting) {
        Optional<Double> clip = ratio(setting, WaveformQuantity.CLIP_UP, WaveformQuantity.CLIP_DOWN);
        boolean hasInput = setting.first().values().containsKey(WaveformQuantity.CLIP_UP);
        return hasInput || state.role() != Role.UNCHANGED
                ? clip
                : ratio(setting, WaveformQuantity.PEAK_UP, WaveformQuantity.PEAK_DOWN);
    }

    private static Optional<Double> ratio(StateAtCondition setting, WaveformQuantity up, WaveformQuantity down) {
        Optional<Measured.Value> a = setting.figure(up).asValue();
        Optional<Measured.Value> b = setting.figure(down).asValue();
        return a.isPresent() && b.isPresent() && a.get().number() > 0 && b.get().number() > 0
                ? Optional.of(a.get().number() / b.get().number())
                : Optional.empty();
    }

    private static Hint hint(State state, Word half, Remark evidence) {
        return new Hint(
                HintCode.ONE_SIDE_NOT_CLIPPING,
                Optional.of(state.name()),
                Remark.of(HintRemark.ONE_SIDE_NOT_CLIPPING, Argument.name(state.label()), Argument.word(half)),
                evidence);
    }
}
