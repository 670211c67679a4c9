package clipwitness.compare.judge;

import clipwitness.compare.result.CaptureResult;
import clipwitness.job.Bench;
import clipwitness.measure.Contribution;
import clipwitness.measure.Harmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Collectors;

/**
 * How well a figure comes back when the controls are set again.
 *
 * <p>Where two or more runs exist anywhere, the standard deviation between runs, pooled over all settings that have several, divided
 * by the root of the number of runs in the state. Else the slope of the figure over the gain control (the mean of the slopes to the
 * neighbouring settings) times the knob's repeatability, and none at 0 % and 100 %, which are end stops.
 */
public final class Repeatability {
    private static final double END_STOP_LOW = 0;
    private static final double END_STOP_HIGH = 100;

    /** What the stimulus, not the gain control, decides. */
    private static final Set<WaveformQuantity> NOT_SET =
            EnumSet.of(WaveformQuantity.FREQUENCY, WaveformQuantity.INPUT_FUNDAMENTAL, WaveformQuantity.INPUT_THD);

    private final Catalogue catalogue;
    private final List<StateAtCondition> repeated;
    private final double knobPercent;
    private final Map<ItemValue, OptionalDouble> pooled = new HashMap<>();
    private final Map<WaveformQuantity, OptionalDouble> pooledQuantities = new EnumMap<>(WaveformQuantity.class);

    public Repeatability(Catalogue catalogue, Bench bench) {
        this.catalogue = catalogue;
        this.repeated = catalogue.all().stream().filter(s -> s.runs() > 1).toList();
        this.knobPercent = 100 * bench.knobRepeatability();
        for (ItemValue figure : ItemValue.all()) {
            pooled.put(figure, pooled(s -> s.figure(figure)));
        }
        for (WaveformQuantity quantity : WaveformQuantity.values()) {
            pooledQuantities.put(quantity, pooled(s -> s.figure(quantity)));
        }
    }

    /** Contribution to the figure of one setting, in the figure's unit; empty where nothing is known or needed. */
    Optional<Contribution> of(StateAtCondition setting, ItemValue figure) {
        return of(setting, pooled.get(figure), (a, b) -> slopeBetween(a, b, s -> s.figure(figure)));
    }

    /** The same for a figure in its own unit; none for what the gain control does not set. */
    Optional<Contribution> of(StateAtCondition setting, WaveformQuantity quantity) {
        return NOT_SET.contains(quantity)
                ? Optional.empty()
                : of(setting, pooledQuantities.get(quantity), (a, b) -> slopeBetween(a, b, s -> s.figure(quantity)));
    }

    private Optional<Contribution> of(StateAtCondition setting, Function<StateAtCondition, Measured> figure) {
        return of(setting, pooled(figure), (a, b) -> slopeBetween(a, b, figure));
    }

    private Optional<Contribution> of(
            StateAtCondition setting,
            OptionalDouble spread,
            ToDoubleBiFunction<StateAtCondition, StateAtCondition> slope) {
        return spread.isPresent()
                ? Optional.of(new Contribution(Source.REPEATABILITY, spread.getAsDouble() / Math.sqrt(setting.runs())))
                : knob(setting, slope);
    }

    /** A capture's figures and harmonics with this contribution. */
    public WaveformResult applied(StateAtCondition setting, WaveformResult result) {
        return result.withValues((q, v) -> with(v, of(setting, q)))
                .withHarmonics(h -> new Harmonic(
                        h.order(), h.amplitude(), with(h.level(), of(setting, s -> s.harmonic(h.order()))), h.phase()));
    }

    /** A figure of a setting with this contribution. */
    public Measured figure(StateAtCondition setting, WaveformQuantity quantity) {
        return with(setting.figure(quantity), of(setting, quantity));
    }

    /** The same for any figure. */
    public Measured figure(StateAtCondition setting, Function<StateAtCondition, Measured> figure) {
        return with(figure.apply(setting), of(setting, figure));
    }

    private static Measured with(Measured figure, Optional<Contribution> contribution) {
        return figure.asValue()
                .flatMap(v -> contribution.map(c -> (Measured) v.plus(c.source(), c.standardUncertainty())))
                .orElse(figure);
    }

    /**
     * Whether nothing is known of how well a figure comes back: the control stands between its end stops, was set once, and was captured at
     * this one position.
     */
    boolean isUnknown(StateAtCondition setting) {
        return isBetweenStops(setting)
                && pooled.get(ItemValue.LEVEL).isEmpty()
                && catalogue.alongGain(setting).size() < 2;
    }

    /**
     * Contribution to the linear remainder of a null: how far two cycles of one state differ when the knob is set again, from the
     * remainder between neighbouring settings of the gain control.
     */
    Optional<Contribution> ofRemainder(StateAtCondition setting) {
        return knob(
                setting,
                (a, b) -> NullItem.remainder(a, b).orElse(0.0) / Math.abs(Catalogue.gain(b) - Catalogue.gain(a)));
    }

    private Optional<Contribution> knob(
            StateAtCondition setting, ToDoubleBiFunction<StateAtCondition, StateAtCondition> slope) {
        if (!isBetweenStops(setting)) {
            return Optional.empty();
        }
        double sum = 0;
        int chords = 0;
        for (StateAtCondition neighbour : catalogue.around(setting)) {
            if (!neighbour.condition().equals(setting.condition())) {
                sum += Math.abs(slope.applyAsDouble(setting, neighbour));
                chords++;
            }
        }
        return sum > 0 ? Optional.of(new Contribution(Source.KNOB, sum / chords * knobPercent)) : Optional.empty();
    }

    /** Whether a control stands where it may be set amiss: not at an end stop. */
    public static boolean isBetweenStops(StateAtCondition setting) {
        OptionalDouble gain = setting.condition().gainPercent();
        return gain.isPresent() && gain.getAsDouble() > END_STOP_LOW && gain.getAsDouble() < END_STOP_HIGH;
    }

    private static double slopeBetween(
            StateAtCondition a, StateAtCondition b, Function<StateAtCondition, Measured> figure) {
        Optional<Measured.Value> from = figure.apply(a).asValue();
        Optional<Measured.Value> to = figure.apply(b).asValue();
        return from.isPresent() && to.isPresent()
                ? difference(from.get(), to.get()) / (Catalogue.gain(b) - Catalogue.gain(a))
                : 0;
    }

    private static double difference(Measured.Value from, Measured.Value to) {
        double difference = to.number() - from.number();
        return to.unit() == Unit.DEGREE ? Math.IEEEremainder(difference, 360) : difference;
    }

    private OptionalDouble pooled(Function<StateAtCondition, Measured> figure) {
        double squares = 0;
        int freedom = 0;
        for (StateAtCondition s : repeated) {
            double[] runs = meansOfRuns(s, figure);
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

    private static double[] meansOfRuns(StateAtCondition setting, Function<StateAtCondition, Measured> figure) {
        Collection<List<CaptureResult>> byRun = setting.replicates().stream()
                .collect(Collectors.groupingBy(c -> c.row().run()))
                .values();
        return byRun.stream()
                .map(run ->
                        figure.apply(new StateAtCondition(setting.state(), setting.label(), setting.condition(), run)))
                .flatMap(m -> m.asValue().stream())
                .mapToDouble(Measured.Value::number)
                .toArray();
    }
}
