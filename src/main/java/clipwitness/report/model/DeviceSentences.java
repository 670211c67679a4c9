package clipwitness.report.model;

import clipwitness.compare.Devices;
import clipwitness.compare.Prediction;
import clipwitness.compare.StatePrediction;
import clipwitness.compare.TracedDevice;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.junction.MatchedPair;
import clipwitness.quantity.Unit;
import clipwitness.report.words.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the traced devices say, in sentences: what is no junction, how the fitted pairs match, whether the tracer explains the scope. */
final class DeviceSentences {
    private static final int DIGITS = 3;

    private final Wording wording;

    DeviceSentences(Wording wording) {
        this.wording = wording;
    }

    List<String> of(Devices devices) {
        List<String> sentences = new ArrayList<>();
        for (TracedDevice d : devices.traced()) {
            if (!d.result().refusal().isEmpty()) {
                sentences.add(wording.say(
                        "device.refused",
                        "device",
                        d.name(),
                        "reason",
                        d.result().refusal()));
            }
        }
        for (Map.Entry<String, MatchedPair> e : devices.fitted().entrySet()) {
            sentences.add(wording.say(
                    "device.fitted",
                    "state",
                    wording.label(e.getKey()),
                    "devices",
                    wording.list(e.getValue().devices()),
                    "mismatch",
                    wording.amount(e.getValue().mismatch()).full()));
        }
        devices.predictions().stream()
                .map(StatePrediction::state)
                .distinct()
                .forEach(state -> highest(devices, state).map(this::sentence).ifPresent(sentences::add));
        return sentences;
    }

    /** Whether the clip levels at each state's highest gain are the predicted ones. */
    String summary(Devices devices) {
        List<Boolean> agreeing = devices.predictions().stream()
                .map(StatePrediction::state)
                .distinct()
                .flatMap(state -> highest(devices, state).stream())
                .flatMap(p -> agrees(p).stream())
                .toList();
        if (agreeing.isEmpty()) {
            return "";
        }
        return wording.say(
                agreeing.contains(false) ? "device.summary.differs" : "device.summary.agrees",
                "count",
                wording.count(devices.traced().size()));
    }

    private static Optional<Boolean> agrees(StatePrediction p) {
        Optional<Boolean> up = p.figure(WaveformQuantity.CLIP_UP.key()).flatMap(Prediction::agrees);
        Optional<Boolean> down = p.figure(WaveformQuantity.CLIP_DOWN.key()).flatMap(Prediction::agrees);
        return up.isPresent() && down.isPresent() ? Optional.of(up.get() && down.get()) : Optional.empty();
    }

    private static Optional<StatePrediction> highest(Devices devices, String state) {
        return devices.predictions().stream()
                .filter(p -> p.state().equals(state))
                .max(Comparator.comparingDouble(p -> p.condition().gainPercent().orElse(0)));
    }

    private String sentence(StatePrediction p) {
        Optional<Prediction> up = p.figure(WaveformQuantity.CLIP_UP.key());
        Optional<Prediction> down = p.figure(WaveformQuantity.CLIP_DOWN.key());
        if (up.isEmpty()
                || down.isEmpty()
                || up.get().difference().isEmpty()
                || down.get().difference().isEmpty()) {
            return up.flatMap(f -> f.predicted().reason())
                    .map(reason ->
                            wording.say("device.unpredicted", "state", wording.label(p.state()), "reason", reason))
                    .orElseGet(() -> wording.say("device.scale-free", "state", wording.label(p.state())));
        }
        boolean agrees = agrees(p).orElse(false);
        return wording.say(
                agrees ? "device.agrees" : "device.differs",
                "condition",
                wording.spoken(p.condition()),
                "state",
                wording.label(p.state()),
                "predictedUp",
                volts(up.get().predicted()),
                "predictedDown",
                volts(down.get().predicted()),
                "measuredUp",
                volts(up.get().measured()),
                "measuredDown",
                volts(down.get().measured()),
                "uncertainty",
                wording.numbers().rounded(up.get().expandedUncertainty().orElseThrow(), Unit.VOLT, 2),
                "source",
                p.source());
    }

    private String volts(Measured measured) {
        return wording.numbers().rounded(measured.value().orElseThrow(), Unit.VOLT, DIGITS);
    }
}
