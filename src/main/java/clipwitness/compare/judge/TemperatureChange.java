package clipwitness.compare.judge;

import clipwitness.measure.Contribution;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.junction.Temperature;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.Doubt;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.Severity;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Two captures at different temperatures: a junction loses about 2 mV/K (common practice), so the level of a clipping state moves by that
 * over its clip level. The clip level is that of the node, taken from the output by the sheet's output gain where it states one.
 */
final class TemperatureChange {

    private final OptionalDouble bench;
    private final double outputGain;

    /**
     * Temperatures at a bench.
     *
     * @param bench      temperature of the bench, °C, where the sheet states it
     * @param outputGain captured output over the clippers' node, a ratio above 0
     */
    TemperatureChange(OptionalDouble bench, double outputGain) {
        this.bench = bench;
        this.outputGain = outputGain;
    }

    /** Contribution to a change of level, dB; none where a temperature is not known, or nothing clips. */
    Optional<Contribution> ofLevel(StateAtCondition from, StateAtCondition to) {
        double kelvin = difference(from, to);
        Optional<Double> clip = clipLevel(from);
        return kelvin > 0 && clip.isPresent()
                ? Optional.of(new Contribution(
                        Source.TEMPERATURE,
                        Decibels.PER_RELATIVE_AMPLITUDE
                                * Temperature.VOLTS_PER_KELVIN
                                * kelvin
                                * outputGain
                                / clip.get()))
                : Optional.empty();
    }

    /** The doubt that two temperatures more than 3 K apart raise. */
    Optional<Doubt> doubt(StateAtCondition from, StateAtCondition to) {
        double kelvin = difference(from, to);
        return kelvin > Temperature.FAR_APART_KELVIN
                ? Optional.of(Doubt.of(
                        Severity.NOTE,
                        DoubtReason.NOT_COMPARABLE_TEMPERATURE,
                        Argument.decimals(kelvin, Unit.KELVIN, 1),
                        from.name()))
                : Optional.empty();
    }

    private double difference(StateAtCondition from, StateAtCondition to) {
        OptionalDouble a = temperature(from);
        OptionalDouble b = temperature(to);
        return a.isPresent() && b.isPresent() ? Math.abs(b.getAsDouble() - a.getAsDouble()) : 0;
    }

    private OptionalDouble temperature(StateAtCondition setting) {
        return CaptureTemperature.stated(setting.replicates().get(0).row(), bench);
    }

    private static Optional<Double> clipLevel(StateAtCondition setting) {
        if (!setting.isClipped()) {
            return Optional.empty();
        }
        return mean(setting, WaveformQuantity.CLIP_UP, WaveformQuantity.CLIP_DOWN)
                .or(() -> mean(setting, WaveformQuantity.PEAK_UP, WaveformQuantity.PEAK_DOWN))
                .filter(v -> v > 0);
    }

    private static Optional<Double> mean(StateAtCondition setting, WaveformQuantity up, WaveformQuantity down) {
        OptionalDouble a = setting.figure(up).value();
        OptionalDouble b = setting.figure(down).value();
        return a.isPresent() && b.isPresent() ? Optional.of((a.getAsDouble() + b.getAsDouble()) / 2) : Optional.empty();
    }
}
