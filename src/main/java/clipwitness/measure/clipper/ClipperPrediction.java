package clipwitness.measure.clipper;

import clipwitness.measure.CycleTrace;
import clipwitness.measure.Harmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Decibels;
import clipwitness.reason.FigureReason;
import clipwitness.reason.Reason;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;

/**
 * What a clipper is predicted to make of a sine: the figures of {@link WaveformQuantity} by their own definitions. Their uncertainty is what
 * the drive, the junctions' voltages together and those of one leg alone put on them, each found by changing it alone; harmonics and
 * distortion have also that of a filter behind the clipper, which is not predicted: a single pole at twenty times the fundamental.
 */
public final class ClipperPrediction {
    private static final int HIGHEST_HARMONIC = 9;

    /** Corner of the filter that is not predicted, over the fundamental. */
    private static final double CORNER = 20;

    /** Smallest onset over the input's amplitude that can be read. */
    private static final double LEAST_ONSET = 0.12;

    private final WaveformResult base;
    private final Map<Source, WaveformResult> changed;
    private final double inputAmplitude;

    private ClipperPrediction(WaveformResult base, Map<Source, WaveformResult> changed, double inputAmplitude) {
        this.inputAmplitude = inputAmplitude;
        this.base = base;
        this.changed = changed;
    }

    /**
     * Predicts a wave.
     *
     * @param circuit   circuit
     * @param drive     drive
     * @param scale     captured output over the circuit's, not 0
     * @param junctions standard uncertainties of the junctions' voltages
     */
    public static ClipperPrediction of(
            ClipperCircuit circuit, Drive drive, double scale, JunctionUncertainty junctions) {
        double driven = drive.amplitude() * (1 + Math.hypot(drive.relativeUncertainty(), PathFits.RESISTANCE));
        ClippingPair pair = circuit.pair();
        Map<Source, WaveformResult> changed = new EnumMap<>(Source.class);
        changed.put(Source.STIMULUS, PredictedWave.of(circuit, drive.of(driven), scale));
        changed.put(
                Source.TEMPERATURE,
                PredictedWave.of(circuit.with(pair.scaled(1 + junctions.together())), drive, scale));
        changed.put(
                Source.NOISE, PredictedWave.of(circuit.with(pair.unbalanced(1 + junctions.ofOneLeg())), drive, scale));
        return new ClipperPrediction(PredictedWave.of(circuit, drive, scale), changed, drive.inputAmplitude());
    }

    /**
     * The wave of a clipped and a clean path as it was fitted. With other voltages or resistances it is fitted anew: what the fit takes up
     * is no uncertainty of its wave.
     *
     * @param fits           the fits
     * @param inputAmplitude peak of the unit's input, V
     * @param inverting      whether the unit inverts
     */
    public static ClipperPrediction ofPaths(PathFits fits, double inputAmplitude, boolean inverting) {
        double peak = inverting ? -inputAmplitude : inputAmplitude;
        Map<Source, WaveformResult> changed = new EnumMap<>(Source.class);
        fits.changed().forEach((source, fit) -> changed.put(source, wave(fit, inputAmplitude, peak)));
        return new ClipperPrediction(wave(fits.base(), inputAmplitude, peak), changed, inputAmplitude);
    }

    private static WaveformResult wave(PathFit fit, double inputAmplitude, double peak) {
        DoubleUnaryOperator output = fit.wave();
        return PredictedWave.of(phase -> output.applyAsDouble(inputAmplitude * phase), peak);
    }

    /** A figure. */
    public Measured get(WaveformQuantity quantity) {
        Measured figure = withBudget(r -> r.get(quantity));
        boolean onset = quantity == WaveformQuantity.ONSET_UP || quantity == WaveformQuantity.ONSET_DOWN;
        if (onset && figure.value().orElse(0) < LEAST_ONSET * inputAmplitude) {
            return Measured.refused(quantity.unit(), figure.reason().orElse(Reason.of(FigureReason.ONSET_TOO_FAST)));
        }
        return quantity == WaveformQuantity.THD
                ? figure.asValue()
                        .map(v -> (Measured) v.plus(Source.METHOD, v.number() * (1 - Decibels.toAmplitude(-filter(3)))))
                        .orElse(figure)
                : figure;
    }

    /** Levels of the harmonics 2 to 9 by their order, dBc. */
    public Map<Integer, Measured> harmonics() {
        Map<Integer, Measured> levels = new TreeMap<>();
        for (Harmonic h : base.harmonics()) {
            int place = h.order() - 2;
            if (h.order() <= HIGHEST_HARMONIC) {
                Measured level = withBudget(r -> r.harmonics().get(place).level());
                levels.put(
                        h.order(),
                        level.asValue()
                                .map(v -> (Measured) v.plus(Source.METHOD, filter(h.order())))
                                .orElse(level));
            }
        }
        return levels;
    }

    /** What the filter takes of a harmonic over the fundamental, dB, as a bound (u = a / sqrt 3). */
    private static double filter(int order) {
        double power = (1 + Math.pow(order / CORNER, 2)) / (1 + Math.pow(1 / CORNER, 2));
        return 10 * Math.log10(power) / Math.sqrt(3);
    }

    /** The predicted mean cycle. */
    public Optional<CycleTrace> cycle() {
        return base.cycle();
    }

    private Measured withBudget(Function<WaveformResult, Measured> figure) {
        Measured measured = figure.apply(base);
        if (measured.asValue().isEmpty()) {
            return measured;
        }
        Measured.Value value = measured.asValue().get();
        for (Map.Entry<Source, WaveformResult> e : changed.entrySet()) {
            OptionalDouble other = figure.apply(e.getValue()).value();
            if (other.isPresent()) {
                value = value.plus(e.getKey(), Math.abs(other.getAsDouble() - value.number()));
            }
        }
        return value;
    }
}
