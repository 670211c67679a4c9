package clipwitness.compare.device;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.job.Clipper;
import clipwitness.measure.Measured;
import clipwitness.measure.TransferCurve;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.clipper.ClipperCircuit;
import clipwitness.measure.clipper.SourceLevel;
import clipwitness.quantity.Decibels;
import clipwitness.reason.Argument;
import clipwitness.reason.DeviceReason;
import clipwitness.reason.Remark;
import clipwitness.reason.SourceRemark;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where the amplitude of a clipper's source is known from: the fundamental of the state without clippers at the same condition, else the
 * small-signal gain times the input, corrected for the load of the pair's slope at zero; half the gap of the
 * transfer curve's branches is its uncertainty. Where the gain behind the clipper is not
 * stated, it follows from how far the captured wave is clipped.
 */
final class ClipperSource {
    private static final double SHORT = 0.1;

    private final Clipper clipper;
    private final Catalogue catalogue;

    ClipperSource(Clipper clipper, Catalogue catalogue) {
        this.clipper = clipper;
        this.catalogue = catalogue;
    }

    /** The amplitude, or why it is not known. */
    sealed interface Answer {
        /**
         * It is known.
         *
         * @param amplitude           peak, V
         * @param relativeUncertainty a ratio
         * @param source              how it is known
         */
        record Known(double amplitude, double relativeUncertainty, Remark source) implements Answer {}

        /** It is not, and why. */
        record Unknown(DeviceReason why) implements Answer {}
    }

    /** Level of the output if nothing clipped, and the circuit's gain that belongs to it. */
    private record Linear(Measured.Value level, double gain, Remark source) {}

    Answer of(StateAtCondition setting, ClipperCircuit circuit) {
        Optional<Linear> linear = unclipped(setting, circuit).or(() -> smallSignal(setting, circuit));
        if (linear.isEmpty()) {
            return new Answer.Unknown(DeviceReason.SOURCE_UNKNOWN);
        }
        Linear known = linear.get();
        if (clipper.outputGain().isPresent()) {
            double amplitude = SourceLevel.of(
                    known.level.number(), known.gain, clipper.outputGain().getAsDouble());
            return new Answer.Known(amplitude, known.level.relativeUncertainty(), known.source);
        }
        return setting.figure(WaveformQuantity.RMS)
                .asValue()
                .map(rms -> matching(known, circuit, rms))
                .orElseGet(() -> new Answer.Unknown(DeviceReason.OUTPUT_LEVEL_UNKNOWN));
    }

    /** A wave that is hardly clipped tells little of its drive: both ends of the interval of its level must have one. */
    private static Answer matching(Linear linear, ClipperCircuit circuit, Measured.Value rms) {
        double ratio = rms.number() / linear.level.number();
        double relative = Math.hypot(linear.level.relativeUncertainty(), rms.relativeUncertainty());
        OptionalDouble amplitude = SourceLevel.matching(circuit, linear.gain, ratio);
        OptionalDouble least = SourceLevel.matching(circuit, linear.gain, ratio * (1 + relative));
        OptionalDouble most = SourceLevel.matching(circuit, linear.gain, ratio * (1 - relative));
        if (amplitude.isEmpty() || least.isEmpty() || most.isEmpty()) {
            return new Answer.Unknown(DeviceReason.OUTPUT_GAIN_UNKNOWN);
        }
        double found = amplitude.getAsDouble();
        return new Answer.Known(
                found,
                Math.max(most.getAsDouble() / found - 1, 1 - least.getAsDouble() / found),
                Remark.of(SourceRemark.OUTPUT_GAIN_FOUND, Argument.inner(linear.source)));
    }

    private Optional<Linear> unclipped(StateAtCondition setting, ClipperCircuit circuit) {
        return clipper.unclipped()
                .flatMap(state -> catalogue.at(state, setting.condition()))
                .flatMap(s -> s.figure(WaveformQuantity.FUNDAMENTAL).asValue())
                .map(level -> new Linear(level, circuit.gainWithoutPair(), Remark.of(SourceRemark.UNCLIPPED_STATE)));
    }

    private static Optional<Linear> smallSignal(StateAtCondition setting, ClipperCircuit circuit) {
        Optional<Measured.Value> gain =
                setting.figure(WaveformQuantity.SMALL_SIGNAL_GAIN).asValue();
        Optional<Measured.Value> input =
                setting.figure(WaveformQuantity.INPUT_FUNDAMENTAL).asValue();
        return gain.flatMap(g -> input.map(in -> {
            double level = Decibels.toAmplitude(g.number()) * in.number();
            double relative = Math.hypot(
                    Math.hypot(g.standardUncertainty() / Decibels.PER_RELATIVE_AMPLITUDE, in.relativeUncertainty()),
                    Math.hypot(gap(setting) / 2, shortness(setting)));
            return new Linear(
                    Measured.withNoise(level, in.unit(), level * relative),
                    circuit.smallSignalGain(),
                    Remark.of(SourceRemark.SMALL_SIGNAL_GAIN));
        }));
    }

    /** Filters behind the clipper part the branches of the transfer curve and flatten the steep part from which the gain is read. */
    private static double gap(StateAtCondition setting) {
        return setting.first().transfer().map(TransferCurve::gap).orElse(0.0);
    }

    /** Where the onset lies below a tenth of the drive, so little of the curve is straight that its slope is read up to a tenth too low. */
    private static double shortness(StateAtCondition setting) {
        OptionalDouble up = setting.figure(WaveformQuantity.ONSET_UP).value();
        OptionalDouble down = setting.figure(WaveformQuantity.ONSET_DOWN).value();
        double onset = Math.min(up.orElse(Double.MAX_VALUE), down.orElse(Double.MAX_VALUE));
        double input =
                setting.figure(WaveformQuantity.INPUT_FUNDAMENTAL).value().orElse(0);
        return onset < SHORT * input || (up.isEmpty() && down.isEmpty()) ? SHORT / Math.sqrt(3) : 0;
    }
}
