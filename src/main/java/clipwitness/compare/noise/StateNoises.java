package clipwitness.compare.noise;

import clipwitness.compare.judge.Catalogue;
import clipwitness.compare.judge.Repeatability;
import clipwitness.compare.result.StateNoise;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.noise.NoiseFigure;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Noise and hum of each state under each condition, at the output and referred to the input. */
public final class StateNoises {
    private final NoiseCatalogue catalogue;
    private final InputGain gain;

    /** The noise of a job; waves say how much the unit amplifies. */
    public StateNoises(NoiseCatalogue catalogue, Catalogue waves, Repeatability repeatability) {
        this.catalogue = catalogue;
        this.gain = new InputGain(waves, repeatability);
    }

    /** All, in the table's order. */
    public List<StateNoise> all() {
        return catalogue.all().stream().map(this::of).toList();
    }

    private StateNoise of(NoiseAtCondition setting) {
        Map<NoiseFigure, Measured> values = new EnumMap<>(NoiseFigure.class);
        Map<NoiseFigure, Measured> atInput = new EnumMap<>(NoiseFigure.class);
        for (NoiseFigure f : NoiseFigure.values()) {
            Measured figure = inVolts(setting, setting.figure(f));
            values.put(f, withControl(figure, gain.control(setting)));
            atInput.put(f, atInput(setting, values.get(f)));
        }
        return new StateNoise(
                setting.state(),
                setting.condition(),
                setting.band(),
                setting.first().spectrum(),
                values,
                atInput,
                setting.hum().stream()
                        .map(l -> l.with(inVolts(setting, l.level())))
                        .toList(),
                setting.lines().nominal(),
                setting.lines().mains(),
                setting.hasVolts() ? setting.first().floor() : OptionalDouble.empty());
    }

    private static Measured inVolts(NoiseAtCondition setting, Measured figure) {
        return setting.hasVolts() ? figure : WaveformResult.withoutVolts(figure);
    }

    /** A figure with how well the gain control is set again. */
    private static Measured withControl(Measured figure, List<Contribution> decibels) {
        return figure.asValue()
                .map(v -> (Measured) v.plus(inVolts(decibels, v.number())))
                .orElse(figure);
    }

    private static List<Contribution> inVolts(List<Contribution> decibels, double number) {
        return decibels.stream()
                .map(c -> c.times(number / Decibels.PER_RELATIVE_AMPLITUDE))
                .toList();
    }

    private Measured atInput(NoiseAtCondition setting, Measured figure) {
        Optional<Measured.Value> g = gain.of(setting.state(), setting.condition());
        Optional<Measured.Value> value = figure.asValue();
        if (value.isEmpty()) {
            return figure;
        }
        if (g.isEmpty()) {
            return Measured.refused(Unit.VOLT, FigureReason.NO_INPUT_GAIN);
        }
        double ratio = Decibels.toAmplitude(g.get().number());
        double number = value.get().number() / ratio;
        List<Contribution> parts = new ArrayList<>();
        value.get().budget().forEach(c -> parts.add(c.times(1 / ratio)));
        parts.addAll(inVolts(g.get().budget(), number));
        return new Measured.Value(number, value.get().unit(), parts, value.get().isUpperBound());
    }
}
