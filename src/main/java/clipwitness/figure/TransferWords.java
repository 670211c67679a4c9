package clipwitness.figure;

import clipwitness.compare.finding.Told;
import clipwitness.compare.rule.WaveSetting;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.reason.FigureReason;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a picture of output against input shows, in words. An onset that was looked for and not reached is none; one that was refused is not known. */
final class TransferWords {
    private final FigureContext context;

    TransferWords(FigureContext context) {
        this.context = context;
    }

    /** The sentences under the curves at one setting. */
    String of(WaveSetting setting) {
        List<String> told = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        setting.waves().forEach((state, wave) -> {
            Optional<String> onsets = onsets(wave, context.called(state));
            onsets.ifPresentOrElse(told::add, () -> unknown.add(context.called(state)));
        });
        String onsets = told.isEmpty() ? "" : context.tell("figure.transfer.says", setting.gainPercent(), told);
        return (onsets + unknown(setting, unknown, told.isEmpty()) + loops(setting)).strip();
    }

    private String unknown(WaveSetting setting, List<String> states, boolean all) {
        if (states.isEmpty()) {
            return "";
        }
        return " "
                + context.say(
                        "figure.transfer.unknown",
                        "condition",
                        context.conditions().gain(setting.gainPercent()),
                        "list",
                        all ? "" : String.join(", ", states));
    }

    /** The onsets of one state; empty where neither is known. */
    private Optional<String> onsets(WaveformResult wave, String state) {
        Measured up = told(wave, WaveformQuantity.ONSET_UP);
        Measured down = told(wave, WaveformQuantity.ONSET_DOWN);
        if (isNone(up) && isNone(down)) {
            return Optional.of(context.say("figure.transfer.neither", "state", state));
        }
        return isUnknown(up) && isUnknown(down)
                ? Optional.empty()
                : Optional.of(
                        context.say("figure.transfer.state", "state", state, "upper", onset(up), "lower", onset(down)));
    }

    private static Measured told(WaveformResult wave, WaveformQuantity onset) {
        return Told.figure(onset, wave.get(onset));
    }

    private static boolean isNone(Measured onset) {
        return onset.reason().filter(r -> r.is(FigureReason.NOT_REACHED)).isPresent();
    }

    private static boolean isUnknown(Measured onset) {
        return onset.asValue().isEmpty() && !isNone(onset);
    }

    private String onset(Measured onset) {
        return onset.asValue()
                .map((Measured.Value v) -> context.values().of(v))
                .orElseGet(() -> context.say(isNone(onset) ? "figure.transfer.none" : "figure.transfer.unreadable"));
    }

    /** What the branches that part mean, where there are any. */
    private String loops(WaveSetting setting) {
        List<String> straightened = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        setting.waves()
                .forEach((state, wave) -> wave.transfer()
                        .filter(t -> t.loop().isPresent())
                        .ifPresent(t -> (t.follows() ? straightened : refused).add(context.called(state))));
        return loops("figure.transfer.straightened", straightened) + loops("figure.transfer.refused", refused);
    }

    private String loops(String name, List<String> states) {
        return states.isEmpty() ? "" : " " + context.say(name, "list", String.join(", ", states));
    }
}
