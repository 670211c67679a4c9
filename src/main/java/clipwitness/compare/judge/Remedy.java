package clipwitness.compare.judge;

import clipwitness.measure.Budget;
import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.FrameReason;
import clipwitness.reason.Reason;
import clipwitness.reason.Remark;
import clipwitness.reason.RemedyRemark;
import clipwitness.reason.Word;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * What would decide an undecided item: the cheapest way to an uncertainty that clears the limit. Cheapest first: what a capture under equal
 * conditions takes away altogether, then a longer record, then a finer range, then more runs, at last a control that is set by something
 * better than the eye. After the work only the later state can be captured again: the earlier one's share of the uncertainty stays.
 */
public final class Remedy {
    private static final int MOST = 50;
    private static final int MOST_RUNS = 12; // more than that nobody sets by hand
    private static final Set<Source> OCCASION =
            EnumSet.of(Source.STIMULUS, Source.TEMPERATURE, Source.VERTICAL_ACCURACY);
    private static final Set<Source> SETTING = EnumSet.of(Source.KNOB, Source.REPEATABILITY);

    private final Measured.Value change;
    private final Map<Source, Double> stays;
    private final About about;
    private final int runs;
    private final Optional<WaveformResult> wave;
    private final double wanted;

    private Remedy(
            Measured.Value change, Map<Source, Double> stays, About about, StateAtCondition again, double distance) {
        this(change, stays, about, again.runs(), Optional.of(again.first()), distance);
    }

    private Remedy(
            Measured.Value change,
            Map<Source, Double> stays,
            About about,
            int runs,
            Optional<WaveformResult> wave,
            double distance) {
        this.change = change;
        this.stays = stays;
        this.about = about;
        this.runs = runs;
        this.wave = wave;
        double standard = distance / Budget.coverageFactor(change.budget());
        this.wanted = standard * standard;
    }

    /**
     * Whom a remark is about.
     *
     * @param what   what is to be captured: each state, or one again
     * @param as     what it has to be captured like: the other, or the one before
     * @param hidden what to say where nothing helps
     * @param byKnob the same where the knob alone is the cause
     */
    private record About(Argument what, Argument as, Remark hidden, Optional<Remark> byKnob) {}

    /**
     * A sentence for the bench after the work.
     *
     * @param change   the undecided change
     * @param distance distance of the figure from the limit, in the unit of the change, 0 or more
     * @param from     the setting before the work, which nobody can capture again
     * @param to       the setting after it
     * @param stays    variance share of the earlier setting in each source
     * @param knob     how well the gain control is set again, percent of its rotation, one standard deviation
     */
    static Remark of(
            Measured.Value change,
            double distance,
            StateAtCondition from,
            StateAtCondition to,
            Map<Source, Double> stays,
            double knob) {
        About about = new About(
                Argument.word(RemedyRemark.STATE_AGAIN, to.name()),
                from.name(),
                Remark.of(RemedyRemark.BEFORE_TOO_UNCERTAIN, from.name()),
                Optional.of(Remark.of(
                        RemedyRemark.KNOB_BEFORE,
                        Argument.prefixed(knob, Unit.PERCENT, 1),
                        Argument.prefixed(hiddenByKnob(change), change.unit(), 2),
                        from.name(),
                        to.name())));
        return new Remedy(change, stays, about, to, distance).remark(distance);
    }

    /**
     * The same before the work, when both states can still be captured better.
     *
     * @param setting the setting whose captures both states will have
     */
    public static Remark beforehand(Measured.Value change, double distance, StateAtCondition setting) {
        About about = new About(
                Argument.word(Word.EACH_STATE),
                Argument.word(Word.THE_OTHER),
                Remark.of(RemedyRemark.NO_NUMBER_OF_CAPTURES),
                Optional.empty());
        return new Remedy(change, new EnumMap<>(Source.class), about, setting, distance).remark(distance);
    }

    /**
     * A sentence after the work about a change of what is no wave.
     *
     * @param from label of the state before
     * @param to   label of the state after it
     * @param runs runs of the state after it
     */
    public static Remark ofNoWave(
            Measured.Value change, double distance, Argument from, Argument to, int runs, Map<Source, Double> stays) {
        About about = new About(
                Argument.word(RemedyRemark.STATE_AGAIN, to),
                from,
                Remark.of(RemedyRemark.BEFORE_TOO_UNCERTAIN, from),
                Optional.empty());
        return new Remedy(change, stays, about, runs, Optional.empty(), distance).remark(distance);
    }

    /** The same before the work. */
    public static Remark ofNoWaveBeforehand(Measured.Value change, double distance, int runs) {
        About about = new About(
                Argument.word(Word.EACH_STATE),
                Argument.word(Word.THE_OTHER),
                Remark.of(RemedyRemark.NO_NUMBER_OF_CAPTURES),
                Optional.empty());
        return new Remedy(change, new EnumMap<>(Source.class), about, runs, Optional.empty(), distance)
                .remark(distance);
    }

    /**
     * How uncertain a change may be that a unit is to keep within a limit: captured twice, even a unit that stays what it is shows a change of up to
     * half its expanded uncertainty in two of three cases, and the limit has to hold both.
     */
    public static double room(double limit) {
        return limit / 1.5;
    }

    /** A remark where there is no figure at all. */
    public static Remark forRefusal(Reason reason) {
        return Remark.of(
                reason.is(DoubtReason.REPLICATES_DIFFER) ? RemedyRemark.CORRECT_ROWS : RemedyRemark.CAPTURE_AGAIN,
                Argument.inner(reason));
    }

    /** The same after the work: what was refused before it can be captured again only where the work can be undone for the purpose. */
    static Remark forRefusal(Reason reason, StateAtCondition from) {
        return forRefusal(reason, from.name());
    }

    /** The same by the label of the state before the work. */
    public static Remark forRefusal(Reason reason, Argument from) {
        Remark remedy = forRefusal(reason);
        boolean ofBefore = reason.code() == FrameReason.IN_STATE
                && reason.arguments().get(0).equals(from);
        return ofBefore && remedy.code() == RemedyRemark.CAPTURE_AGAIN
                ? Remark.of(RemedyRemark.CAPTURE_AGAIN_IF_UNDONE, Argument.inner(reason))
                : remedy;
    }

    private Remark remark(double distance) {
        if (!(distance > 0)) {
            return Remark.of(RemedyRemark.ON_THE_LIMIT);
        }
        return occasion()
                .or(this::record)
                .or(this::range)
                .or(this::moreRuns)
                .or(this::betterKnob)
                .or(this::knobAlone)
                .orElse(about.hidden());
    }

    private Optional<Remark> occasion() {
        if (square(OCCASION) == 0 || square() - square(OCCASION) > wanted) {
            return Optional.empty();
        }
        Source largest = change.largestFirst().stream()
                .map(Contribution::source)
                .filter(OCCASION::contains)
                .findFirst()
                .orElseThrow();
        RemedyRemark same = switch (largest) {
            case STIMULUS -> RemedyRemark.SAME_STIMULUS;
            case TEMPERATURE -> RemedyRemark.SAME_TEMPERATURE;
            default -> RemedyRemark.SAME_RANGE;
        };
        return Optional.of(Remark.of(same, about.what(), about.as()));
    }

    private Optional<Remark> record() {
        RemedyRemark longer = wave.isPresent() ? RemedyRemark.LONGER_RECORD : RemedyRemark.LONGER_NOISE_RECORD;
        return times(EnumSet.of(Source.NOISE)).map(n -> counted(longer, n));
    }

    private Optional<Remark> range() {
        return times(EnumSet.of(Source.CONVERTER_STEP))
                .map(n -> (int) Math.ceil(Math.sqrt(n)))
                .map(n -> wave.map(w -> FinerRange.holds(w, FinerRange.USUAL_BITS, n))
                                .orElse(true)
                        ? counted(RemedyRemark.FINER_RANGE, n)
                        : counted(RemedyRemark.MORE_BITS, (int) Math.ceil(Math.log(n) / Math.log(2))));
    }

    private Optional<Remark> moreRuns() {
        Set<Source> fall = EnumSet.copyOf(SETTING);
        fall.add(Source.NOISE);
        return times(fall).filter(n -> n * runs <= MOST_RUNS).map(n -> counted(RemedyRemark.MORE_RUNS, n * runs));
    }

    private Remark counted(RemedyRemark remedy, int count) {
        return Remark.of(remedy, about.what(), Argument.count(count));
    }

    private Optional<Remark> betterKnob() {
        double part = falling(SETTING);
        double rest = square() - part;
        return part > 0 && rest < wanted
                ? Optional.of(Remark.of(
                        RemedyRemark.BETTER_KNOB,
                        about.what(),
                        Argument.decimals(Math.ceil(Math.sqrt(part / (wanted - rest))), Unit.ONE, 0)))
                : Optional.empty();
    }

    /** Without the knob the change would be decided: it alone is in the way. */
    private Optional<Remark> knobAlone() {
        return square() - square(EnumSet.of(Source.KNOB)) < wanted ? about.byKnob() : Optional.empty();
    }

    /** Expanded uncertainty that the knob alone makes. */
    private static double hiddenByKnob(Measured.Value change) {
        List<Contribution> knob =
                change.budget().stream().filter(c -> c.source() == Source.KNOB).toList();
        return Budget.coverageFactor(knob) * Budget.standardUncertainty(knob);
    }

    /** How many times as much averages some contributions far enough down, the others left as they are. */
    private Optional<Integer> times(Set<Source> sources) {
        double part = falling(sources);
        double rest = square() - part;
        double n = Math.ceil(part / (wanted - rest) - 1e-9);
        return part > 0 && rest < wanted && n <= MOST ? Optional.of((int) Math.max(2, n)) : Optional.empty();
    }

    /** Variance of some sources that captures to come can still lower. */
    private double falling(Set<Source> sources) {
        return square(sources, c -> 1 - stays.getOrDefault(c.source(), 0.0));
    }

    private double square() {
        return square(EnumSet.allOf(Source.class));
    }

    private double square(Set<Source> sources) {
        return square(sources, c -> 1);
    }

    private double square(Set<Source> sources, ToDoubleFunction<Contribution> share) {
        return change.budget().stream()
                .filter(c -> sources.contains(c.source()))
                .mapToDouble(c -> c.standardUncertainty() * c.standardUncertainty() * share.applyAsDouble(c))
                .sum();
    }
}
