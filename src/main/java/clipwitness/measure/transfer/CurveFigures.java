package clipwitness.measure.transfer;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.wave.Asymmetry;
import clipwitness.measure.wave.Extreme;
import clipwitness.measure.wave.FittedWave;
import clipwitness.measure.wave.ReferenceLevel;
import clipwitness.reason.FigureReason;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The figures of a transfer curve whose output follows its input at each instant. */
final class CurveFigures {
    /** The figures that rest on the curve. */
    static final List<WaveformQuantity> ALL = List.of(
            WaveformQuantity.SMALL_SIGNAL_GAIN,
            WaveformQuantity.ONSET_UP,
            WaveformQuantity.ONSET_DOWN,
            WaveformQuantity.KNEE_UP,
            WaveformQuantity.KNEE_DOWN,
            WaveformQuantity.CLIP_UP,
            WaveformQuantity.CLIP_DOWN,
            WaveformQuantity.CLIP_ASYMMETRY);

    private static final List<WaveformQuantity> OF_THE_LINE = ALL.subList(0, 5);

    private final Map<WaveformQuantity, Measured> values = new EnumMap<>(WaveformQuantity.class);
    private final FittedWave output;
    private final InputPlaces inputs;
    private final MeanCrossing centre;
    private final double middle;

    /**
     * The figures of one capture.
     *
     * @param up   upper extreme of the output
     * @param down lower extreme of the output
     */
    CurveFigures(FittedWave output, FittedWave input, Extreme up, Extreme down) {
        this(output, input, new InputPlaces(output, input), up, down);
    }

    /** The same of one of several outputs over the same inputs. */
    CurveFigures(FittedWave output, FittedWave input, InputPlaces inputs, Extreme up, Extreme down) {
        this.output = output;
        this.inputs = inputs;
        this.centre = MeanCrossing.of(output, inputs.aligned());
        writeClips(up, down);
        Transfer transfer = Transfer.of(output, inputs);
        Transfer mirrored = transfer.mirrored();
        SmallSignal.Answer answer = SmallSignal.of(transfer, mirrored, input.codeStep());
        if (answer instanceof SmallSignal.Answer.Unknown unknown) {
            OF_THE_LINE.forEach(q -> values.put(q, Measured.refused(q.unit(), unknown.why())));
        }
        answer.found().ifPresent(found -> write(transfer, mirrored, found, relativeNoise(input)));
        middle = answer.found().map(f -> f.line().centre()).orElse(centre.value());
    }

    private CurveFigures(CurveFigures others, Extreme up, Extreme down) {
        output = others.output;
        inputs = others.inputs;
        centre = others.centre;
        middle = others.middle;
        values.putAll(others.values);
        writeClips(up, down);
    }

    /** The figures of the same curve with other extremes. */
    CurveFigures withExtremes(Extreme up, Extreme down) {
        return new CurveFigures(this, up, down);
    }

    private void writeClips(Extreme up, Extreme down) {
        ReferenceLevel level = ReferenceLevel.apart(centre.value(), centre.noise());
        values.put(WaveformQuantity.CLIP_UP, bound(up.distanceFrom(level), centre.apart()));
        values.put(WaveformQuantity.CLIP_DOWN, bound(down.distanceFrom(level), centre.apart()));
        double share = 200 / (up.value() - down.value());
        values.put(WaveformQuantity.CLIP_ASYMMETRY, bound(Asymmetry.of(up, down, level), share * centre.apart()));
    }

    /** The figures, one for each of {@link #ALL}. */
    Map<WaveformQuantity, Measured> values() {
        return values;
    }

    /** The output. */
    FittedWave output() {
        return output;
    }

    /** Its inputs. */
    InputPlaces inputs() {
        return inputs;
    }

    /** Output at the input's mean, V. */
    double middle() {
        return middle;
    }

    /** Half the branches' distance where the input crosses its mean is a bound, u = a / sqrt 3. */
    private static Measured bound(Measured figure, double halfDistance) {
        return figure.asValue()
                .filter(v -> halfDistance > 0)
                .<Measured>map(v -> v.plus(Source.BRANCHES, halfDistance / Math.sqrt(3)))
                .orElse(figure);
    }

    private static double relativeNoise(FittedWave input) {
        return Math.sqrt(input.quadratureVariance(1)) / input.fit().amplitude(1);
    }

    private void write(Transfer transfer, Transfer mirrored, SmallSignal found, double relativeInputNoise) {
        double step = transfer.undithered();
        double slope = found.line().slope();
        values.put(WaveformQuantity.SMALL_SIGNAL_GAIN, found.gain(relativeInputNoise));
        values.put(WaveformQuantity.ONSET_UP, onset(found.line(), found.onsetUp(), relativeInputNoise, step));
        values.put(WaveformQuantity.ONSET_DOWN, onset(found.line(), found.onsetDown(), relativeInputNoise, step));
        values.put(WaveformQuantity.KNEE_UP, Knee.of(transfer, slope, found.smallerOnset(transfer)));
        values.put(WaveformQuantity.KNEE_DOWN, Knee.of(mirrored, slope, found.smallerOnset(transfer)));
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
