package clipwitness.compare;

import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What would decide an undecided item: the cheapest way to an uncertainty that clears the limit. Cheapest first: what a second capture under
 * equal conditions takes away altogether, then a longer record, then a finer range, then more runs, at last a control that is
 * set by something better than the eye.
 */
final class Remedy {
    private static final int MOST = 50;
    private static final int MOST_RUNS = 12; // more than that nobody sets by hand
    private static final Set<Source> OCCASION =
            EnumSet.of(Source.STIMULUS, Source.TEMPERATURE, Source.VERTICAL_ACCURACY);
    private static final Set<Source> SETTING = EnumSet.of(Source.KNOB, Source.REPEATABILITY);

    private final Measured.Value change;
    private final double wanted;
    private final int runs;

    private Remedy(Measured.Value change, double wanted, int runs) {
        this.change = change;
        this.wanted = wanted * wanted;
        this.runs = runs;
    }

    /**
     * A sentence for the bench.
     *
     * @param change   the undecided change
     * @param distance distance of the figure from the limit, in the unit of the change, 0 or more
     * @param runs     runs that either state has, 1 or more
     */
    static String of(Measured.Value change, double distance, int runs) {
        if (!(distance > 0)) {
            return "The change lies on the limit; more captures would not decide.";
        }
        Remedy remedy = new Remedy(change, distance / 2, runs);
        return remedy.occasion()
                .or(remedy::record)
                .or(remedy::range)
                .or(remedy::moreRuns)
                .or(remedy::betterKnob)
                .orElse("The change lies so near the limit that no number of captures would soon decide it: "
                        + remedy.largest() + " is the largest part of its uncertainty.");
    }

    /** A sentence where there is no figure at all. */
    static String forRefusal(String reason) {
        return "Capture it again: " + reason + ".";
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
        return Optional.of(
                switch (largest) {
                    case STIMULUS -> "Set the generator to the same level in both states and capture again.";
                    case TEMPERATURE -> "Capture both states at the same temperature.";
                    default -> "Capture both states at the same vertical range of the same instrument.";
                });
    }

    private Optional<String> record() {
        return times(EnumSet.of(Source.NOISE))
                .map(n -> "Capture both states with a record " + n + " times as long, or average " + n
                        + " captures: noise is what hides the change.");
    }

    private Optional<String> range() {
        return times(EnumSet.of(Source.CONVERTER_STEP))
                .map(n -> (int) Math.ceil(Math.sqrt(n)))
                .map(n -> "Capture both states at a vertical range " + n
                        + " times finer, or with more bits: the converter step hides the change.");
    }

    private Optional<String> moreRuns() {
        Set<Source> fall = EnumSet.copyOf(SETTING);
        fall.add(Source.NOISE);
        return times(fall)
                .filter(n -> n * runs <= MOST_RUNS)
                .map(n -> "Set the controls anew and capture each state until it has " + n * runs
                        + " runs (column run of captures.csv): how well the knob is set again hides the change.");
    }

    private Optional<String> betterKnob() {
        double part = square(SETTING);
        double rest = square() - part;
        return part > 0 && rest < wanted
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "Set the gain control again %.0f times as well as it was: by a dial, a mark, or at an end stop.",
                        Math.ceil(Math.sqrt(part / (wanted - rest)))))
                : Optional.empty();
    }

    /** How many times as much averages some contributions far enough down, the others left as they are. */
    private Optional<Integer> times(Set<Source> falling) {
        double part = square(falling);
        double rest = square() - part;
        double n = Math.ceil(part / (wanted - rest) - 1e-9);
        return part > 0 && rest < wanted && n <= MOST ? Optional.of((int) Math.max(2, n)) : Optional.empty();
    }

    private String largest() {
        return change.largestFirst().stream()
                .findFirst()
                .map(c -> c.source().code())
                .orElse("nothing");
    }

    private double square() {
        return square(EnumSet.allOf(Source.class));
    }

    private double square(Set<Source> sources) {
        return change.budget().stream()
                .filter(c -> sources.contains(c.source()))
                .mapToDouble(c -> c.standardUncertainty() * c.standardUncertainty())
                .sum();
    }
}
