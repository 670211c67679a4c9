package clipwitness.measure.transfer;

import clipwitness.measure.Measured;
import clipwitness.measure.TransferCurve;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.wave.Asymmetry;
import clipwitness.measure.wave.Extreme;
import clipwitness.measure.wave.FittedWave;
import clipwitness.measure.wave.OutputValues;
import clipwitness.measure.wave.ReferenceLevel;
import clipwitness.measure.wave.TotalHarmonicDistortion;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The figures that need an input channel. */
public final class TransferValues {
    private static final List<WaveformQuantity> OF_THE_CURVE = List.of(
            WaveformQuantity.SMALL_SIGNAL_GAIN,
            WaveformQuantity.ONSET_UP,
            WaveformQuantity.ONSET_DOWN,
            WaveformQuantity.KNEE_UP,
            WaveformQuantity.KNEE_DOWN);

    private TransferValues() {}

    /**
     * Writes the figures of output against input.
     *
     * @param up   upper extreme of the output
     * @param down lower extreme of the output
     * @return the transfer curve
     */
    public static TransferCurve write(
            Map<WaveformQuantity, Measured> values, FittedWave output, FittedWave input, Extreme up, Extreme down) {
        values.put(WaveformQuantity.INPUT_FUNDAMENTAL, OutputValues.fundamental(input));
        values.put(WaveformQuantity.INPUT_THD, TotalHarmonicDistortion.of(input));
        values.put(WaveformQuantity.GAIN, LinearResponse.gain(output, input));
        values.put(WaveformQuantity.PHASE, LinearResponse.phase(output, input));
        MeanCrossing centre = MeanCrossing.of(output, input);
        ReferenceLevel level = ReferenceLevel.apart(centre.value(), centre.noise());
        values.put(WaveformQuantity.CLIP_UP, up.distanceFrom(level));
        values.put(WaveformQuantity.CLIP_DOWN, down.distanceFrom(level));
        values.put(WaveformQuantity.CLIP_ASYMMETRY, Asymmetry.of(up, down, level));
        Transfer transfer = Transfer.of(output, input);
        SmallSignal.Answer answer = SmallSignal.of(transfer, input.codeStep());
        writeCurve(values, transfer, answer, relativeNoise(input), output.undithered());
        double middle = answer.found().map(f -> f.line().centre()).orElse(centre.value());
        return new TransferCurve(
                transfer.input(), transfer.output().map(v -> v - middle), transfer.gap(), transfer.inverting());
    }

    /** Refuses all figures that need an input. */
    public static void refuse(Map<WaveformQuantity, Measured> values, Reason reason) {
        for (WaveformQuantity q : WaveformQuantity.values()) {
            if (q.needsInput()) {
                values.put(q, Measured.refused(q.unit(), reason));
            }
        }
    }

    private static double relativeNoise(FittedWave input) {
        return Math.sqrt(input.quadratureVariance(1)) / input.fit().amplitude(1);
    }

    private static void writeCurve(
            Map<WaveformQuantity, Measured> values,
            Transfer transfer,
            SmallSignal.Answer answer,
            double relativeInputNoise,
            double step) {
        if (answer instanceof SmallSignal.Answer.Unknown unknown) {
            OF_THE_CURVE.forEach(q -> values.put(q, Measured.refused(q.unit(), unknown.why())));
            return;
        }
        SmallSignal found = answer.found().orElseThrow();
        values.put(WaveformQuantity.SMALL_SIGNAL_GAIN, found.gain(relativeInputNoise));
        values.put(WaveformQuantity.ONSET_UP, onset(found.line(), found.onsetUp(), relativeInputNoise, step));
        values.put(WaveformQuantity.ONSET_DOWN, onset(found.line(), found.onsetDown(), relativeInputNoise, step));
        values.put(WaveformQuantity.KNEE_UP, Knee.of(transfer, found.line().slope()));
        values.put(
                WaveformQuantity.KNEE_DOWN,
                Knee.of(transfer.mirrored(), found.line().slope()));
    }

    private static Measured onset(
            SmallSignalLine line, Optional<OnsetPoint> point, double relativeInputNoise, double step) {
        if (!line.tellsOneDecibel()) {
            return Measured.refused(WaveformQuantity.ONSET_UP.unit(), FigureReason.SLOPE_HIDDEN);
        }
        return point.map(p -> p.measured(relativeInputNoise, step))
                .orElse(Measured.refused(WaveformQuantity.ONSET_UP.unit(), FigureReason.NOT_REACHED));
    }
}
