package clipwitness.compare;

import clipwitness.job.Bench;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Collectors;

/**
 * How well a figure comes back when the controls are set again.
 *
 * <p>Where two or more runs exist anywhere, the standard deviation between runs, pooled over all settings that have several, divided
 * by the root of the number of runs in the state. Else the slope of the figure over the gain control (the mean of the slopes to the
 * neighbouring settings) times the knob's repeatability, and none at 0 % and 100 %, which are end stops.
 */
final class Repeatability {
    private static final double END_STOP_LOW = 0;
    private static final double END_STOP_HIGH = 100;

    private final Catalogue catalogue;
    private final double knobPercent;
    private final Map<ItemFigure, OptionalDouble> pooled = new EnumMap<>(ItemFigure.class);

    Repeatability(Catalogue catalogue, Bench bench) {
        this.catalogue = catalogue;
        this.knobPercent = 100 * bench.knobRepeatability();
        for (ItemFigure figure : ItemFigure.values()) {
            pooled.put(figure, pooled(figure));
        }
    }

    /** Contribution to the figure of one setting, in the figure's unit; empty where nothing is known or needed. */
    Optional<Contribution> of(Setting setting, ItemFigure figure) {
        OptionalDouble spread = pooled.get(figure);
        if (spread.isPresent()) {
            return Optional.of(
                    new Contribution(Source.REPEATABILITY, spread.getAsDouble() / Math.sqrt(setting.runs())));
        }
        return knob(setting, (a, b) -> slopeBetween(a, b, figure));
    }

    /**
     * Contribution to the linear remainder of a null: how far two cycles of one state differ when the knob is set again, from the
     * remainder between neighbouring settings of the gain control.
     */
    Optional<Contribution> ofRemainder(Setting setting) {
        return knob(
                setting,
                (a, b) -> NullItem.remainder(a, b).orElse(0.0) / Math.abs(Catalogue.gain(b) - Catalogue.gain(a)));
    }

    private Optional<Contribution> knob(Setting setting, ToDoubleBiFunction<Setting, Setting> slope) {
        if (setting.condition().gainPercent().isEmpty()) {
            return Optional.empty();
        }
        double gain = Catalogue.gain(setting);
        if (gain <= END_STOP_LOW || gain >= END_STOP_HIGH) {
            return Optional.empty();
        }
        List<Setting> along = catalogue.alongGain(setting);
        int at = along.indexOf(setting);
        double sum = 0;
        int chords = 0;
        for (int neighbour : new int[] {at - 1, at + 1}) {
            if (neighbour >= 0 && neighbour < along.size()) {
                sum += Math.abs(slope.applyAsDouble(setting, along.get(neighbour)));
                chords++;
            }
        }
        return sum > 0 ? Optional.of(new Contribution(Source.KNOB, sum / chords * knobPercent)) : Optional.empty();
    }

    private static double slopeBetween(Setting a, Setting b, ItemFigure figure) {
        Optional<Measured.Value> from = a.figure(figure).asValue();
        Optional<Measured.Value> to = b.figure(figure).asValue();
        return from.isPresent() && to.isPresent()
                ? figure.difference(to.get().number(), from.get().number()) / (Catalogue.gain(b) - Catalogue.gain(a))
                : 0;
    }

    private OptionalDouble pooled(ItemFigure figure) {
        double squares = 0;
        int freedom = 0;
        for (Setting s : catalogue.all()) {
            double[] runs = s.runs() > 1 ? meansOfRuns(s, figure) : new double[0];
            if (runs.length > 1) {
                double mean = 0;
                for (double r : runs) {
                    mean += r / runs.length;
                }
                for (double r : runs) {
                    squares += (r - mean) * (r - mean);
                }
                freedom += runs.length - 1;
            }
        }
        return freedom == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(squares / freedom));
    }

    private static double[] meansOfRuns(Setting setting, ItemFigure figure) {
        Collection<List<CaptureResult>> byRun = setting.replicates().stream()
                .collect(Collectors.groupingBy(c -> c.row().run()))
                .values();
        return byRun.stream()
                .map(run -> new Setting(setting.state(), setting.label(), setting.condition(), run).figure(figure))
                .flatMap(m -> m.asValue().stream())
                .mapToDouble(Measured.Value::number)
                .toArray();
    }
}
