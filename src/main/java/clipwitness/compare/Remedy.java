package clipwitness.compare;

import clipwitness.measure.Contribution;
import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import java.util.Optional;

/** What would decide an undecided item: the cheapest way to an uncertainty that clears the limit. */
final class Remedy {
    private static final int MOST_CAPTURES = 50;

    private Remedy() {}

    /**
     * A sentence for the bench.
     *
     * @param change   the undecided change
     * @param distance distance of the figure from the limit, in the unit of the change, 0 or more
     * @param limit    size of the limit, in the unit of the change
     */
    static String of(Measured.Value change, double distance, double limit) {
        Optional<Contribution> largest = change.largestFirst().stream().findFirst();
        double expanded = 2 * change.standardUncertainty();
        if (largest.isEmpty() || !(distance > 0)) {
            return "The change lies on the limit; more captures would not decide.";
        }
        double times = Math.ceil(Math.pow(expanded / distance, 2));
        if (times > MOST_CAPTURES && expanded > limit) {
            return tooCoarse(largest.get().source());
        }
        if (times > MOST_CAPTURES) {
            return "The change lies so near the limit that more captures would hardly decide.";
        }
        return sentence(largest.get().source(), (int) Math.max(2, times));
    }

    private static String tooCoarse(Source source) {
        return switch (source) {
            case KNOB, REPEATABILITY ->
                "The uncertainty exceeds the limit by far: stop the knob at a mark that it finds again, and capture both states.";
            case STIMULUS -> "Set the generator to the same level in both states and capture again.";
            default -> "The uncertainty exceeds the limit by far: a longer record at a finer range is needed first.";
        };
    }

    /** A sentence where there is no figure at all. */
    static String forRefusal(String reason) {
        return "Capture it again: " + reason + ".";
    }

    private static String sentence(Source source, int times) {
        return switch (source) {
            case KNOB, REPEATABILITY ->
                "Set the controls anew and capture each state until it has " + times
                        + " runs (column run of captures.csv): how well the knob is set again is the largest part of the uncertainty.";
            case CONVERTER_STEP, VERTICAL_ACCURACY ->
                "Capture both states at a finer vertical range: the converter step is the largest part of the uncertainty.";
            case NOISE ->
                "Capture a record " + times + " times as long, or average " + times
                        + " captures: noise is the largest part of the uncertainty.";
            default ->
                "Capture both states " + times + " times under equal conditions: " + source.code()
                        + " is the largest part of the uncertainty.";
        };
    }
}
