package clipwitness.compare.hint;

import clipwitness.compare.judge.ItemValue;
import clipwitness.compare.result.Hint;
import clipwitness.job.State;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.NumberText;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The clippers look out of circuit: at the highest gain the distortion is under a fifth of what it was, and the level went up. */
final class NotClipping implements HintRule {
    private static final String CODE = "not-clipping";
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
                CODE,
                Optional.of(state.name()),
                "“" + state.label()
                        + "” does not clip where the unit did before: look for clippers that are not connected, a switch that"
                        + " leaves them out, or devices that do not conduct.",
                String.format(
                        Locale.ROOT,
                        "%s the distortion is %s %% instead of %s %%, and the level is %.1f dB higher",
                        pair.place(),
                        NumberText.plain(after.getAsDouble(), 2),
                        NumberText.plain(before.getAsDouble(), 2),
                        level.getAsDouble())));
    }
}
