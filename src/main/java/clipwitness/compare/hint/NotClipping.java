package clipwitness.compare.hint;

import clipwitness.compare.judge.ItemValue;
import clipwitness.compare.result.Hint;
import clipwitness.job.Role;
import clipwitness.job.State;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.HintRemark;
import clipwitness.reason.Remark;
import java.util.List;
import java.util.Optional;

/**
 * The clippers look out of circuit: of the settings that clipped before, an unchanged state has under a fifth of the distortion and more
 * level at half of them and more, and less level at none (a stage that runs out of supply clips by itself at the others, and so does the one leg that is left
 * behind a coupling capacitor). A changed state may clip later as it was meant to: there it has to be so at all of them.
 */
final class NotClipping implements HintRule {
    private static final double SHARE = 0.2;

    @Override
    public List<Hint> look(Evidence evidence) {
        return Symptom.hints(evidence.compared().stream()
                .filter(s -> !evidence.hasNoLeg(s))
                .flatMap(s -> look(s, evidence.clippedBefore(s)).stream())
                .toList());
    }

    private static Optional<Symptom.Seen> look(State state, List<Evidence.Pair> clipped) {
        List<Evidence.Pair> clean =
                clipped.stream().filter(NotClipping::isClean).toList();
        double share = state.role() == Role.UNCHANGED ? 0.5 : 1;
        boolean quieter =
                clipped.stream().anyMatch(p -> !(p.change(ItemValue.LEVEL).orElse(Double.NaN) > 0));
        if (clean.isEmpty() || clean.size() < share * clipped.size() || quieter) {
            return Optional.empty();
        }
        Symptom look = clean.size() == clipped.size() ? Symptom.NOT_CLIPPING : Symptom.HARDLY_CLIPPING;
        return Optional.of(new Symptom.Seen(
                look, state, evidence(Evidence.atHighestGain(clean).orElseThrow())));
    }

    private static boolean isClean(Evidence.Pair pair) {
        Optional<Measured.Value> before =
                pair.from().figure(WaveformQuantity.THD).asValue();
        Optional<Measured.Value> after = pair.to().figure(WaveformQuantity.THD).asValue();
        return before.isPresent()
                && after.isPresent()
                && after.get().shown() < SHARE * before.get().number();
    }

    private static Remark evidence(Evidence.Pair pair) {
        return Remark.of(
                HintRemark.NOT_CLIPPING_BY,
                pair.place(),
                thd(pair.to().figure(WaveformQuantity.THD)),
                thd(pair.from().figure(WaveformQuantity.THD)),
                Argument.decimals(pair.change(ItemValue.LEVEL).orElseThrow(), Unit.DECIBEL, 1));
    }

    private static Argument thd(Measured figure) {
        return Argument.plain(figure.value().orElseThrow(), Unit.PERCENT, 2);
    }
}
