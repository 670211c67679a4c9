package clipwitness.report.build;

import clipwitness.compare.result.Devices;
import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.compare.result.TracedDevice;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.junction.CurrentRange;
import clipwitness.measure.match.MatchedPair;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import clipwitness.reason.Reason;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the traced devices say, in sentences: what is no junction, how the fitted pairs match, whether the traced curves explain the captured waves. */
final class DeviceSentences {
    private static final int DIGITS = 3;

    private final JobWording wording;

    DeviceSentences(JobWording wording) {
        this.wording = wording;
    }

    List<String> of(Devices devices) {
        List<String> sentences = new ArrayList<>();
        for (TracedDevice d : devices.traced()) {
            d.result()
                    .refusal()
                    .map(wording.speech()::clause)
                    .ifPresent(reason ->
                            sentences.add(wording.say("device.refused", "device", d.name(), "reason", reason)));
        }
        for (Map.Entry<String, MatchedPair> e : devices.fitted().entrySet()) {
            sentences.add(wording.say(
                    "device.fitted",
                    "state",
                    wording.called(e.getKey()),
                    "devices",
                    wording.list(e.getValue().devices()),
                    "mismatch",
                    wording.amount(e.getValue().mismatch()).full(),
                    "range",
                    range(e.getValue().range())));
        }
        devices.highest().stream().filter(p -> refusal(p).isEmpty()).forEach(p -> sentences.add(sentence(p)));
        sentences.addAll(unpredicted(devices));
        return sentences;
    }

    private record Unpredicted(String place, String reason) {}

    /** Why nothing is predicted, once for all states that share the reason; with the place where something is predicted elsewhere. */
    private List<String> unpredicted(Devices devices) {
        Map<Unpredicted, List<String>> alike = new LinkedHashMap<>();
        devices.highest()
                .forEach(p -> refusal(p)
                        .ifPresent(reason -> alike.computeIfAbsent(
                                        new Unpredicted(
                                                place(devices, p),
                                                wording.speech().clause(reason)),
                                        r -> new ArrayList<>())
                                .add(wording.called(p.state()))));
        return alike.entrySet().stream()
                .map(e -> wording.say(
                        "device.unpredicted",
                        "condition",
                        e.getKey().place(),
                        "states",
                        wording.list(e.getValue()),
                        "reason",
                        e.getKey().reason()))
                .toList();
    }

    private String place(Devices devices, StatePrediction refused) {
        boolean elsewhere = devices.predictions().stream()
                .anyMatch(p -> p.state().equals(refused.state()) && refusal(p).isEmpty());
        return elsewhere ? wording.condition(refused.condition()) : "";
    }

    private static Optional<Reason> refusal(StatePrediction prediction) {
        return prediction
                .figure(WaveformQuantity.CLIP_UP.key())
                .flatMap(f -> f.predicted().reason());
    }

    private String range(CurrentRange range) {
        return wording.say(
                "device.range",
                "lowest",
                wording.numbers().rounded(range.lowest(), Unit.AMPERE, 2),
                "highest",
                wording.numbers().rounded(range.highest(), Unit.AMPERE, 2));
    }

    /** Which states' clip levels at their highest gain are the predicted ones, and which are not; empty where none can be compared. */
    String summary(Devices devices) {
        List<String> sentences = new ArrayList<>();
        for (boolean agreeing : new boolean[] {true, false}) {
            List<String> states = devices.highest().stream()
                    .filter(p -> agrees(p).equals(Optional.of(agreeing)))
                    .map(p -> wording.called(p.state()))
                    .toList();
            if (!states.isEmpty()) {
                sentences.add(wording.say(
                        agreeing ? "device.summary.agrees" : "device.summary.differs",
                        "highest",
                        wording.apart(wording.say("condition.highest")),
                        "states",
                        wording.list(states)));
            }
        }
        return String.join(" ", sentences);
    }

    private static Optional<Boolean> agrees(StatePrediction p) {
        Optional<Boolean> up = p.figure(WaveformQuantity.CLIP_UP.key()).flatMap(Prediction::agrees);
        Optional<Boolean> down = p.figure(WaveformQuantity.CLIP_DOWN.key()).flatMap(Prediction::agrees);
        return up.isPresent() && down.isPresent() ? Optional.of(up.get() && down.get()) : Optional.empty();
    }

    private String sentence(StatePrediction p) {
        Optional<Prediction> up = p.figure(WaveformQuantity.CLIP_UP.key());
        Optional<Prediction> down = p.figure(WaveformQuantity.CLIP_DOWN.key());
        if (up.isEmpty()
                || down.isEmpty()
                || up.get().difference().isEmpty()
                || down.get().difference().isEmpty()) {
            return wording.say("device.scale-free", "state", wording.called(p.state()));
        }
        return wording.say(
                "device." + agreement(up.get(), down.get()),
                "condition",
                wording.apart(wording.condition(p.condition())),
                "state",
                wording.called(p.state()),
                "predictedUp",
                volts(up.get().predicted(), up.get()),
                "predictedDown",
                volts(down.get().predicted(), down.get()),
                "measuredUp",
                volts(up.get().measured(), up.get()),
                "measuredDown",
                volts(down.get().measured(), down.get()),
                "uncertaintyUp",
                uncertainty(up.get()),
                "uncertaintyDown",
                uncertainty(down.get()),
                "source",
                wording.speech().text(p.source().orElseThrow()));
    }

    private static String agreement(Prediction up, Prediction down) {
        boolean above = up.agrees().orElseThrow();
        boolean below = down.agrees().orElseThrow();
        if (above == below) {
            return above ? "agrees" : "differs";
        }
        return above ? "differs.down" : "differs.up";
    }

    private String uncertainty(Prediction figure) {
        return wording.numbers().rounded(figure.expandedUncertainty().orElseThrow(), Unit.VOLT, 2);
    }

    /** A clip level with no digit that the uncertainty of the difference beside it makes meaningless. */
    private String volts(Measured measured, Prediction figure) {
        double value = measured.value().orElseThrow();
        return wording.numbers()
                .rounded(
                        value,
                        Unit.VOLT,
                        NumberText.digits(value, figure.expandedUncertainty().orElseThrow(), DIGITS));
    }
}
