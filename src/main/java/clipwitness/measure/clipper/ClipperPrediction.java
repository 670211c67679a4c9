package clipwitness.measure.clipper;

import clipwitness.measure.CycleTrace;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
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

    private final PredictedWave base;
    private final Map<Source, PredictedWave> changed;
    private final double inputAmplitude;

    private ClipperPrediction(PredictedWave base, Map<Source, PredictedWave> changed, double inputAmplitude) {
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
        double driven = 1 + Math.hypot(drive.relativeUncertainty(), PathFits.RESISTANCE);
        double highest = drive.amplitude() * driven;
        double input = drive.inputAmplitude();
        ClippingPair pair = circuit.pair();
        DoubleUnaryOperator output = circuit.output(highest);
        DoubleUnaryOperator warmer =
                circuit.with(pair.scaled(1 + junctions.together())).output(highest);
        DoubleUnaryOperator unlike =
                circuit.with(pair.unbalanced(1 + junctions.ofOneLeg())).output(highest);
        Map<Source, PredictedWave> changed = new EnumMap<>(Source.class);
        changed.put(Source.STIMULUS, wave(output, highest, scale, input));
        changed.put(Source.TEMPERATURE, wave(warmer, drive.amplitude(), scale, input));
        changed.put(Source.NOISE, wave(unlike, drive.amplitude(), scale, input));
        return new ClipperPrediction(wave(output, drive.amplitude(), scale, input), changed, input);
    }

    private static PredictedWave wave(DoubleUnaryOperator output, double amplitude, double scale, double input) {
        return PredictedWave.of(p -> scale * output.applyAsDouble(amplitude * p), input);
    }

    /**
     * The wave of a clipped and a clean path as it was fitted. With other voltages or resistances it is fitted anew: what the fit takes up
     * is no uncertainty of its wave.
     *
     * @param fits           the fits
     * @param inputAmplitude peak of the unit's input, V
     */
    public static ClipperPrediction ofPaths(PathFits fits, double inputAmplitude) {
        Map<Source, PredictedWave> changed = new EnumMap<>(Source.class);
        fits.changed()
                .forEach((source, fit) -> changed.put(source, wave(fit.wave(), inputAmplitude, 1, inputAmplitude)));
        return new ClipperPrediction(
                wave(fits.base().wave(), inputAmplitude, 1, inputAmplitude), changed, inputAmplitude);
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
        for (int order = 2; order <= HIGHEST_HARMONIC; order++) {
            int k = order;
            Measured level = withBudget(r -> r.levels().get(k));
            levels.put(
                    k,
                    level.asValue()
                            .map(v -> (Measured) v.plus(Source.METHOD, filter(k)))
                            .orElse(level));
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
        return Optional.of(base.cycle());
    }

    private Measured withBudget(Function<PredictedWave, Measured> figure) {
        Measured measured = figure.apply(base);
        if (measured.asValue().isEmpty()) {
            return measured;
        }
        Measured.Value value = measured.asValue().get();
        for (Map.Entry<Source, PredictedWave> e : changed.entrySet()) {
            OptionalDouble other = figure.apply(e.getValue()).value();
            if (other.isPresent()) {
                value = value.plus(e.getKey(), Math.abs(other.getAsDouble() - value.number()));
            }
        }
        return value;
    }
}
