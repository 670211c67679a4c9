package clipwitness.measure.clipper;

import clipwitness.measure.CycleTrace;
import clipwitness.measure.Harmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What a clipper is predicted to make of a sine: the figures of {@link WaveformQuantity} by their own definitions, with the uncertainty
 * that drive, junction voltages and resistances put on them, each found by changing it alone.
 */
public final class ClipperPrediction {
    private static final int HIGHEST_HARMONIC = 9;

    /** Resistances as their colour code says: 5 % is the common tolerance, a bound (u = a / sqrt 3). */
    private static final double RESISTANCE = 0.05 / Math.sqrt(3);

    private final WaveformResult base;
    private final WaveformResult driven;
    private final WaveformResult shifted;
    private final WaveformResult resisted;

    private ClipperPrediction(
            WaveformResult base, WaveformResult driven, WaveformResult shifted, WaveformResult resisted) {
        this.base = base;
        this.driven = driven;
        this.shifted = shifted;
        this.resisted = resisted;
    }

    /**
     * Predicts a wave.
     *
     * @param circuit  circuit
     * @param drive    drive
     * @param scale    captured output over the circuit's, not 0
     * @param junction standard uncertainty of the junctions' voltages, a ratio
     */
    public static ClipperPrediction of(ClipperCircuit circuit, Drive drive, double scale, double junction) {
        return new ClipperPrediction(
                PredictedWave.of(circuit, drive, scale),
                PredictedWave.of(circuit, drive.of(drive.amplitude() * (1 + drive.relativeUncertainty())), scale),
                PredictedWave.of(circuit.with(circuit.pair().scaled(1 + junction)), drive, scale),
                PredictedWave.of(circuit.withResistance(1 + RESISTANCE), drive, scale));
    }

    /** A figure. */
    public Measured get(WaveformQuantity quantity) {
        return withBudget(base.get(quantity), driven.get(quantity), shifted.get(quantity), resisted.get(quantity));
    }

    /** Levels of the harmonics 2 to 9 by their order, dBc. */
    public Map<Integer, Measured> harmonics() {
        Map<Integer, Measured> levels = new TreeMap<>();
        for (int i = 0; i < base.harmonics().size(); i++) {
            Harmonic h = base.harmonics().get(i);
            if (h.order() <= HIGHEST_HARMONIC) {
                levels.put(
                        h.order(),
                        withBudget(
                                h.level(),
                                driven.harmonics().get(i).level(),
                                shifted.harmonics().get(i).level(),
                                resisted.harmonics().get(i).level()));
            }
        }
        return levels;
    }

    /** The predicted mean cycle. */
    public Optional<CycleTrace> cycle() {
        return base.cycle();
    }

    private static Measured withBudget(Measured base, Measured driven, Measured shifted, Measured resisted) {
        if (base.asValue().isEmpty()) {
            return base;
        }
        Measured.Value value = base.asValue().get();
        Map<Source, Measured> changed = new EnumMap<>(Source.class);
        changed.put(Source.STIMULUS, driven);
        changed.put(Source.TEMPERATURE, shifted);
        changed.put(Source.METHOD, resisted);
        for (Map.Entry<Source, Measured> e : changed.entrySet()) {
            OptionalDouble other = e.getValue().value();
            if (other.isPresent()) {
                value = value.plus(e.getKey(), Math.abs(other.getAsDouble() - value.number()));
            }
        }
        return value;
    }
}
