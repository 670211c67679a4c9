package clipwitness.compare.judge;

import clipwitness.job.Bench;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Residue;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.series.GainSlope;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How well a figure repeats when the controls are set again: the slope of the figure over the gain control times the knob's standard
 * deviation, none at 0 % and 100 %, which are end stops, and the scatter of runs that is no knob; both over the root of the number of runs.
 * The knob is the job sheet's, pooled with what the level's runs show ({@link RunFit}). A state that was captured at one position only
 * borrows the slope of the state that was captured at the same position and at others; where there is none, the runs at such positions show
 * the whole.
 */
public final class Repeatability {
    private static final double END_STOP_LOW = 0;
    private static final double END_STOP_HIGH = 100;

    /** Common practice: away from its ends an audio taper turns 20 dB in a fifth of the rotation at the fastest. dB for one percent. */
    private static final double FASTEST_TAPER = 1;

    private static final double COVERAGE = 2;

    /** What the stimulus, not the gain control, decides. */
    private static final Set<WaveformQuantity> NOT_SET =
            EnumSet.of(WaveformQuantity.FREQUENCY, WaveformQuantity.INPUT_FUNDAMENTAL, WaveformQuantity.INPUT_THD);

    private final Catalogue catalogue;
    private final SlopeOverGain slopes;
    private final List<StateAtCondition> repeated;
    private final RunFit level;
    private final Map<String, Fits> fits = new ConcurrentHashMap<>();

    /** What was worked out before, by the figure's name: the same settings are compared with many others. */
    private final Map<String, Map<StateAtCondition, List<Contribution>>> known = new ConcurrentHashMap<>();

    private final Map<String, Map<StateAtCondition, Measured>> values = new ConcurrentHashMap<>();
    private final Map<String, Map<StateAtCondition, Optional<GainSlope>>> slopesKnown = new ConcurrentHashMap<>();

    public Repeatability(Catalogue catalogue, Bench bench) {
        this.catalogue = catalogue;
        this.slopes = new SlopeOverGain(catalogue);
        this.repeated = catalogue.all().stream().filter(s -> s.runs() > 1).toList();
        this.level = RunFit.ofLevel(100 * bench.knobRepeatability(), runs(figure(ItemValue.LEVEL), true));
    }

    /** One kind of figure: its name, and its value at a setting. */
    private record Figure(String name, Function<StateAtCondition, Measured> at) {}

    /**
     * How the runs of one kind of figure differ.
     *
     * @param sloped   at end stops, and where the slope over the gain control is well known
     * @param slopeless between the end stops where there is no slope: knob and all
     */
    private record Fits(RunFit sloped, RunFit slopeless) {}

    private static Figure figure(ItemValue figure) {
        return new Figure("item " + figure, s -> s.figure(figure));
    }

    private static Figure figure(WaveformQuantity quantity) {
        return new Figure("figure " + quantity, s -> s.figure(quantity));
    }

    /** How well the gain control is set again, percent of its rotation, one standard deviation: the sheet's word with what the runs show. */
    public double knobPercent() {
        return level.knob();
    }

    /** Contributions to the figure of one setting, in the figure's unit; none where nothing is known or needed. */
    List<Contribution> of(StateAtCondition setting, ItemValue figure) {
        return of(setting, figure(figure));
    }

    /** The same for a figure in its own unit; none for what the gain control does not set. */
    public List<Contribution> of(StateAtCondition setting, WaveformQuantity quantity) {
        return NOT_SET.contains(quantity) ? List.of() : of(setting, figure(quantity));
    }

    private List<Contribution> of(StateAtCondition setting, Figure figure) {
        return kept(known, figure.name, setting, () -> worked(setting, figure));
    }

    /** A value of a setting, by its identity: comparing two settings would compare all of their captures. */
    private static <K, V> V kept(
            Map<K, Map<StateAtCondition, V>> all, K key, StateAtCondition setting, Supplier<V> work) {
        Map<StateAtCondition, V> some =
                all.computeIfAbsent(key, k -> Collections.synchronizedMap(new IdentityHashMap<>()));
        V found = some.get(setting);
        if (found == null) {
            found = work.get();
            some.put(setting, found);
        }
        return found;
    }

    private List<Contribution> worked(StateAtCondition setting, Figure figure) {
        double runs = effectiveRuns(setting, figure);
        Fits known = fits(figure);
        if (!isBetweenStops(setting)) {
            return known.sloped.scatter(runs).stream().toList();
        }
        Optional<GainSlope> slope = slope(setting, figure);
        return slope.isEmpty()
                ? known.slopeless.scatter(runs).stream().toList()
                : Stream.of(level.knob(slope.get().effective(), runs), known.sloped.scatter(runs))
                        .flatMap(Optional::stream)
                        .toList();
    }

    /** A capture's figures and harmonics with this contribution. */
    public WaveformResult applied(StateAtCondition setting, WaveformResult result) {
        return result.withValues((q, v) -> bounded(q, v, of(setting, q)))
                .withHarmonics(h -> h.withLevel(Residue.plus(h.level(), ofHarmonic(setting, h.order()))));
    }

    private List<Contribution> ofHarmonic(StateAtCondition setting, int order) {
        return of(setting, new Figure("harmonic " + order, s -> s.harmonic(order)));
    }

    /** A figure of a setting with this contribution; a bound where it makes the figure no larger than its uncertainty. */
    public Measured figure(StateAtCondition setting, WaveformQuantity quantity) {
        return bounded(quantity, setting.figure(quantity), of(setting, quantity));
    }

    /** The same for a curve over the gain control, on which the knob moves a figure along: a bound only where noise hides it. */
    Measured alongGain(StateAtCondition setting, WaveformQuantity quantity) {
        return with(setting.figure(quantity), of(setting, quantity));
    }

    private static Measured bounded(WaveformQuantity quantity, Measured figure, List<Contribution> contributions) {
        return quantity.isResidue() ? Residue.plus(figure, contributions) : with(figure, contributions);
    }

    /** A harmonic of a setting over the rms with this contribution. */
    Measured levelMatched(StateAtCondition setting, int order) {
        Figure figure = new Figure("matched " + order, s -> s.levelMatched(order));
        return with(value(setting, figure), of(setting, figure));
    }

    private static Measured with(Measured figure, List<Contribution> contributions) {
        return figure.asValue()
                .map(v -> (Measured) v.plus(contributions).orBoundOfLevel())
                .orElse(figure);
    }

    /**
     * Whether nothing is known of how well a figure repeats: the control stands between its end stops, no slope over it is known, and
     * nowhere was such a position set twice.
     */
    boolean isUnknown(StateAtCondition setting) {
        Figure level = figure(ItemValue.LEVEL);
        return isBetweenStops(setting)
                && knobPercent() > 0
                && slope(setting, level).isEmpty()
                && runs(level, false).isEmpty();
    }

    /** The largest change of level, k = 2, that setting the gain control once in each of two states makes, dB. */
    double mostOfLevel() {
        return COVERAGE * Math.sqrt(2) * FASTEST_TAPER * knobPercent();
    }

    /**
     * Contribution to the linear remainder of a null, which takes one capture of each state: how far two cycles of one state differ when
     * the knob is set again.
     */
    Optional<Contribution> ofRemainder(StateAtCondition setting) {
        if (!isBetweenStops(setting)) {
            return Optional.empty();
        }
        return alike(setting)
                .map(slopes::ofRemainder)
                .filter(OptionalDouble::isPresent)
                .findFirst()
                .flatMap(slope -> level.knob(slope.getAsDouble(), 1));
    }

    /** Whether a control is between its end stops, where it may be set inexactly. */
    public static boolean isBetweenStops(StateAtCondition setting) {
        OptionalDouble gain = setting.condition().gainPercent();
        return gain.isPresent() && gain.getAsDouble() > END_STOP_LOW && gain.getAsDouble() < END_STOP_HIGH;
    }

    /** The figure of a setting of the catalogue. */
    private Measured value(StateAtCondition setting, Figure figure) {
        return kept(values, figure.name, setting, () -> figure.at.apply(setting));
    }

    /** The slope at a setting, else at the same position in another state. */
    private Optional<GainSlope> slope(StateAtCondition setting, Figure figure) {
        return alike(setting)
                .map(s -> kept(slopesKnown, figure.name, s, () -> slopes.of(s, x -> value(x, figure))))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** The setting, then those of the other states under its condition. */
    private Stream<StateAtCondition> alike(StateAtCondition setting) {
        return Stream.concat(
                Stream.of(setting),
                catalogue.all().stream()
                        .filter(s -> s.condition().equals(setting.condition())
                                && !s.state().equals(setting.state())));
    }

    /** Number of runs in the mean of a figure; fewer where one of them has most of the captures. */
    private static double effectiveRuns(StateAtCondition setting, Figure figure) {
        Collection<Long> counts = setting.replicates().stream()
                .filter(c -> figure.at.apply(setting.only(c)).value().isPresent())
                .collect(Collectors.groupingBy(c -> c.row().run(), Collectors.counting()))
                .values();
        double sum = counts.stream().mapToDouble(Long::doubleValue).sum();
        double squares = counts.stream().mapToDouble(n -> (double) n * n).sum();
        return squares > 0 ? sum * sum / squares : 1;
    }

    private Fits fits(Figure figure) {
        Fits found = fits.get(figure.name);
        if (found == null) {
            boolean isLevel = figure.name.equals(figure(ItemValue.LEVEL).name);
            found = new Fits(
                    isLevel ? level : level.ofFigure(runs(figure, true)),
                    RunFit.ofSheet(0).ofFigure(runs(figure, false)));
            fits.put(figure.name, found);
        }
        return found;
    }

    /** Settings that were set more than once: with a slope that is well known or none to know, or without one. */
    private List<RunVariance> runs(Figure figure, boolean sloped) {
        return repeated.stream()
                .flatMap(s -> sloped ? sloped(s, figure).stream() : slopeless(s, figure).stream())
                .toList();
    }

    private Optional<RunVariance> sloped(StateAtCondition setting, Figure figure) {
        return isBetweenStops(setting)
                ? slope(setting, figure)
                        .filter(GainSlope::isWellKnown)
                        .flatMap(s -> RunVariance.of(setting, figure.at, s.slope()))
                : RunVariance.of(setting, figure.at, 0);
    }

    private Optional<RunVariance> slopeless(StateAtCondition setting, Figure figure) {
        return isBetweenStops(setting) && slope(setting, figure).isEmpty()
                ? RunVariance.of(setting, figure.at, 0)
                : Optional.empty();
    }
}
