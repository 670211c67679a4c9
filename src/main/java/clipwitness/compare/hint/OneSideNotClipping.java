package clipwitness.compare.hint;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.Hint;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One half of the wave goes on rising where the other clips: the onset is not reached on one side while it is on the other, at the
 * highest gain captured, or the ratio of the clip levels grows by at least 1.5 times from the middle to the highest gain (an open leg
 * 4.3 times, a one-to-two pair 1.13). Without an input channel the peaks stand for the clip levels, and only of unchanged states.
 */
final class OneSideNotClipping implements HintRule {
    private static final String CODE = "one-side-not-clipping";
    private static final double GROWTH = 1.5;

    @Override
    public List<Hint> look(Evidence evidence) {
        return evidence.job().sheet().states().stream()
                .flatMap(s -> hint(evidence, s).stream())
                .toList();
    }

    private static Optional<Hint> hint(Evidence evidence, State state) {
        return evidence.highest(state.name())
                .filter(top -> top.first().branchesAgree())
                .flatMap(top -> onsets(state, top).or(() -> growth(evidence, state, top)));
    }

    private static Optional<Hint> onsets(State state, StateAtCondition top) {
        Measured up = top.figure(WaveformQuantity.ONSET_UP);
        Measured down = top.figure(WaveformQuantity.ONSET_DOWN);
        if (up.value().isPresent() == down.value().isPresent() || top.first().refused()) {
            return Optional.empty();
        }
        String missing = up.value().isPresent() ? "lower" : "upper";
        Measured refused = up.value().isPresent() ? down : up;
        if (!refused.reason().orElse("").contains("not reached")) {
            return Optional.empty();
        }
        return Optional.of(hint(
                state,
                missing,
                String.format(
                        Locale.ROOT,
                        "at %.0f %% gain the %s half does not reach its onset, the other half does",
                        Catalogue.gain(top),
                        missing)));
    }

    private static Optional<Hint> growth(Evidence evidence, State state, StateAtCondition top) {
        Optional<StateAtCondition> middle = middle(evidence.catalogue().alongGain(top));
        if (middle.isEmpty() || !middle.get().first().branchesAgree()) {
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
                growth > 1 ? "upper" : "lower",
                String.format(
                        Locale.ROOT,
                        "upper over lower clip level is %.2f at %.0f %% gain and %.2f at %.0f %%",
                        low.get(),
                        Catalogue.gain(middle.get()),
                        high.get(),
                        Catalogue.gain(top))));
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

    private static Hint hint(State state, String half, String evidence) {
        return new Hint(
                CODE,
                Optional.of(state.name()),
                "In “" + state.label() + "” the " + half
                        + " half of the wave does not clip where the other does: look for an open leg, a lifted joint or a"
                        + " device that does not conduct.",
                evidence);
    }
}
