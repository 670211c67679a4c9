package clipwitness.compare.judge;

import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Locale;
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
    private final Words words;
    private final int runs;
    private final double wanted;

    private Remedy(Measured.Value change, Map<Source, Double> stays, Words words, int runs, double distance) {
        this.change = change;
        this.stays = stays;
        this.words = words;
        this.runs = runs;
        this.wanted = distance * distance / 4;
    }

    /**
     * Whom a sentence is about.
     *
     * @param what   what is to be captured, {@code each state}
     * @param as     what it has to be captured like, {@code the other}
     * @param hidden what is too uncertain where nothing helps
     */
    private record Words(String what, String as, String hidden) {}

    /**
     * A sentence for the bench after the work.
     *
     * @param change   the undecided change
     * @param distance distance of the figure from the limit, in the unit of the change, 0 or more
     * @param from     the setting before the work, which nobody can capture again
     * @param to       the setting after it
     * @param stays    variance share of the earlier setting in each source
     */
    static String of(
            Measured.Value change,
            double distance,
            StateAtCondition from,
            StateAtCondition to,
            Map<Source, Double> stays) {
        Words words = new Words(
                to.quoted() + " again",
                from.quoted(),
                "What was captured of " + from.quoted()
                        + " is too uncertain so near the limit, and it cannot be captured again.");
        return new Remedy(change, stays, words, to.runs(), distance).sentence(distance);
    }

    /**
     * The same before the work, when both states can still be captured better.
     *
     * @param setting the setting whose captures both states will have
     */
    public static String beforehand(Measured.Value change, double distance, StateAtCondition setting) {
        Words words = new Words(
                "each state", "the other", "No number of captures would soon show a change as small as the limit.");
        return new Remedy(change, new EnumMap<>(Source.class), words, setting.runs(), distance).sentence(distance);
    }

    /** A sentence where there is no figure at all. */
    public static String forRefusal(String reason) {
        return "Capture it again: " + reason + ".";
    }

    /** The same after the work: what was refused before it can be captured again only where the work can be undone for the purpose. */
    public static String forRefusal(String reason, StateAtCondition from) {
        return reason.startsWith(Change.in(from))
                ? "Capture it again if the unit can be put back into this state: " + reason + "."
                : forRefusal(reason);
    }

    private String sentence(double distance) {
        if (!(distance > 0)) {
            return "The change lies on the limit; more captures would not decide.";
        }
        return occasion()
                .or(this::record)
                .or(this::range)
                .or(this::moreRuns)
                .or(this::betterKnob)
                .orElse(words.hidden());
    }

    private Optional<String> occasion() {
        if (square(OCCASION) == 0 || square() - square(OCCASION) > wanted) {
            return Optional.empty();
        }
        Source largest = change.largestFirst().stream()
                .map(Contribution::source)
                .filter(OCCASION::contains)
                .findFirst()
                .orElseThrow();
        String as = words.as();
        return Optional.of("Capture " + words.what()
                + switch (largest) {
                    case STIMULUS -> " with the generator set as it was for " + as + ".";
                    case TEMPERATURE -> " at the temperature at which " + as + " was captured.";
                    default -> " at the vertical range, and with the instrument, at which " + as + " was captured.";
                });
    }

    private Optional<String> record() {
        return times(EnumSet.of(Source.NOISE))
                .map(n -> "Capture " + words.what() + " with a record " + n + " times as long, or average " + n
                        + " captures: noise is what hides the change.");
    }

    private Optional<String> range() {
        return times(EnumSet.of(Source.CONVERTER_STEP))
                .map(n -> (int) Math.ceil(Math.sqrt(n)))
                .map(n -> "Capture " + words.what() + " at a vertical range " + n
                        + " times finer, or with more bits: the converter step hides the change.");
    }

    private Optional<String> moreRuns() {
        Set<Source> fall = EnumSet.copyOf(SETTING);
        fall.add(Source.NOISE);
        return times(fall)
                .filter(n -> n * runs <= MOST_RUNS)
                .map(n -> "Set the controls anew and capture " + words.what() + " until there are " + n * runs
                        + " runs (column run of captures.csv): how well the knob is set again hides the change.");
    }

    private Optional<String> betterKnob() {
        double part = falling(SETTING);
        double rest = square() - part;
        return part > 0 && rest < wanted
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "Set the gain control %.0f times as well as it was, by a dial, a mark, or at an end stop, and capture %s.",
                        Math.ceil(Math.sqrt(part / (wanted - rest))),
                        words.what()))
                : Optional.empty();
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
