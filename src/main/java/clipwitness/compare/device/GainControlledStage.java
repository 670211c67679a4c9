package clipwitness.compare.device;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.job.Clipper;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.clipper.ClipperCircuit;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import java.util.Optional;

/**
 * A feedback clipper whose gain control is one of its resistances. The sheet states it as at full gain; there the source is found as of any
 * clipper, and elsewhere it is the same source. The resistance there follows from the gain over that at full gain: of the state without clippers where it was
 * captured at both settings, else for small signals.
 */
final class GainControlledStage {
    private static final NumberText NUMBERS = NumberText.in("en");
    private static final double FULL = 100;

    private final Clipper clipper;
    private final Catalogue catalogue;

    GainControlledStage(Clipper clipper, Catalogue catalogue) {
        this.clipper = clipper;
        this.catalogue = catalogue;
    }

    /** The stage at a setting, or why it is not known. */
    sealed interface Answer {
        /**
         * It is known.
         *
         * @param circuit circuit with the resistance that the gain control has there
         * @param source  its source
         */
        record Known(ClipperCircuit circuit, ClipperSource.Answer.Known source) implements Answer {}

        /** It is not, and why. */
        record Unknown(String reason) implements Answer {}
    }

    /** A gain over that at full gain, and the pair's conductance that loads both. */
    private record Ratio(Measured.Value value, double conductance) {}

    /** The stage at a setting; the circuit is that at full gain. */
    Answer of(StateAtCondition setting, ClipperCircuit.Feedback full) {
        if (setting.condition().gainPercent().orElse(FULL) == FULL) {
            return source(setting, full, full, 1, "");
        }
        Optional<StateAtCondition> reference = atFullGain(setting);
        if (reference.isEmpty()) {
            return new Answer.Unknown(
                    "the gain control is the " + resistance() + " of the clipper, which the sheet states as at"
                            + " full gain, and nothing of this state was captured there");
        }
        Optional<Ratio> ratio = ratio(setting, reference.get(), full);
        Optional<ClipperCircuit.Feedback> here = ratio.flatMap(r -> turned(full, r));
        if (here.isEmpty()) {
            return new Answer.Unknown("the " + resistance()
                    + " of the clipper at this setting cannot be told from the gain for small signals");
        }
        return source(reference.get(), full, here.get(), ratio.get().value().relativeUncertainty(), words(here.get()));
    }

    private Answer source(
            StateAtCondition reference,
            ClipperCircuit.Feedback full,
            ClipperCircuit.Feedback here,
            double more,
            String words) {
        ClipperSource.Answer answer = new ClipperSource(clipper, catalogue).of(reference, full);
        if (answer instanceof ClipperSource.Answer.Unknown unknown) {
            return new Answer.Unknown(unknown.reason());
        }
        ClipperSource.Answer.Known known = (ClipperSource.Answer.Known) answer;
        double relative = words.isEmpty() ? known.relativeUncertainty() : Math.hypot(known.relativeUncertainty(), more);
        return new Answer.Known(
                here, new ClipperSource.Answer.Known(known.amplitude(), relative, known.words() + words));
    }

    private Optional<StateAtCondition> atFullGain(StateAtCondition setting) {
        return catalogue.alongGain(setting).stream()
                .filter(s -> s.condition().gainPercent().orElse(0) == FULL)
                .findFirst();
    }

    private Optional<Ratio> ratio(StateAtCondition here, StateAtCondition full, ClipperCircuit.Feedback circuit) {
        Optional<Measured.Value> open = clipper.unclipped()
                .flatMap(s -> ratio(
                        catalogue.at(s, here.condition()), catalogue.at(s, full.condition()), WaveformQuantity.GAIN));
        return open.map(v -> new Ratio(v, 0))
                .or(() -> ratio(Optional.of(here), Optional.of(full), WaveformQuantity.SMALL_SIGNAL_GAIN)
                        .map(v -> new Ratio(v, circuit.pair().conductanceAtZero())));
    }

    /** The ratio of two gains. */
    private static Optional<Measured.Value> ratio(
            Optional<StateAtCondition> here, Optional<StateAtCondition> full, WaveformQuantity gain) {
        return here.flatMap(h -> h.figure(gain).asValue())
                .flatMap(h -> full.flatMap(f -> f.figure(gain).asValue()).map(f -> {
                    double ratio = Decibels.toAmplitude(h.number() - f.number());
                    double decibels = Math.hypot(h.standardUncertainty(), f.standardUncertainty());
                    return Measured.withNoise(ratio, Unit.ONE, ratio * decibels / Decibels.PER_RELATIVE_AMPLITUDE);
                }));
    }

    private Optional<ClipperCircuit.Feedback> turned(ClipperCircuit.Feedback full, Ratio ratio) {
        double atFull = Math.abs(ratio.conductance() > 0 ? full.smallSignalGain() : full.gainWithoutPair());
        double gain = atFull * ratio.value().number();
        return clipper.gainControl() == Clipper.GainControl.FEEDBACK
                ? full.withFeedbackFor(gain, ratio.conductance())
                : full.withInputFor(gain, ratio.conductance());
    }

    private String resistance() {
        return clipper.gainControl() == Clipper.GainControl.FEEDBACK ? "feedback-resistance" : "input-resistance";
    }

    private String words(ClipperCircuit.Feedback here) {
        double ohms = clipper.gainControl() == Clipper.GainControl.FEEDBACK ? here.feedback() : here.input();
        return "; " + resistance() + " " + NUMBERS.rounded(ohms, Unit.OHM, 2) + " at this setting, from the gain";
    }
}
