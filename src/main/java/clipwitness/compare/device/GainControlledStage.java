package clipwitness.compare.device;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.job.Clipper;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.clipper.ClipperCircuit;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.DeviceReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Remark;
import clipwitness.reason.SourceRemark;
import clipwitness.reason.Word;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A feedback clipper whose gain control is one of its resistances. The sheet states it as at full gain; there the source is found as of any
 * clipper, and elsewhere it is the same source. The resistance there follows from the gain over that at full gain: of the state without clippers where it was
 * captured at both settings, else for small signals.
 */
final class GainControlledStage {
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
        record Unknown(Reason why) implements Answer {}
    }

    /** A gain over that at full gain, and the pair's conductance that loads both. */
    private record Ratio(Measured.Value value, double conductance) {}

    /** The stage at a setting; the circuit is that at full gain. */
    Answer of(StateAtCondition setting, ClipperCircuit.Feedback full) {
        if (setting.condition().gainPercent().orElse(FULL) == FULL) {
            return source(setting, full, full, OptionalDouble.empty());
        }
        Optional<StateAtCondition> reference = atFullGain(setting);
        if (reference.isEmpty()) {
            return new Answer.Unknown(Reason.of(DeviceReason.NOT_AT_FULL_GAIN, resistance()));
        }
        Optional<Ratio> ratio = ratio(setting, reference.get(), full);
        Optional<ClipperCircuit.Feedback> here = ratio.flatMap(r -> turned(full, r));
        if (here.isEmpty()) {
            return new Answer.Unknown(Reason.of(DeviceReason.RESISTANCE_UNKNOWN, resistance()));
        }
        return source(
                reference.get(),
                full,
                here.get(),
                OptionalDouble.of(ratio.get().value().relativeUncertainty()));
    }

    private Answer source(
            StateAtCondition reference,
            ClipperCircuit.Feedback full,
            ClipperCircuit.Feedback here,
            OptionalDouble more) {
        ClipperSource.Answer answer = new ClipperSource(clipper, catalogue).of(reference, full);
        if (answer instanceof ClipperSource.Answer.Unknown unknown) {
            return new Answer.Unknown(Reason.of(unknown.why()));
        }
        ClipperSource.Answer.Known known = (ClipperSource.Answer.Known) answer;
        return new Answer.Known(
                here,
                new ClipperSource.Answer.Known(
                        known.amplitude(),
                        Math.hypot(known.relativeUncertainty(), more.orElse(0)),
                        more.isPresent() ? found(known.source(), here) : known.source()));
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

    private Argument resistance() {
        return Argument.word(
                clipper.gainControl() == Clipper.GainControl.FEEDBACK
                        ? Word.FEEDBACK_RESISTANCE
                        : Word.INPUT_RESISTANCE);
    }

    private Remark found(Remark source, ClipperCircuit.Feedback here) {
        double ohms = clipper.gainControl() == Clipper.GainControl.FEEDBACK ? here.feedback() : here.input();
        return Remark.of(
                SourceRemark.RESISTANCE_FOUND,
                Argument.inner(source),
                resistance(),
                Argument.prefixed(ohms, Unit.OHM, 2));
    }
}
