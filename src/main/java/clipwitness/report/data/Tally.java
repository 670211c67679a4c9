package clipwitness.report.data;

import clipwitness.compare.result.Decision;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;

/**
 * How the items of one quantity in a comparison were decided.
 *
 * @param quantity  name of the quantity in the results
 * @param judged    number of items that were judged
 * @param failed    how many of them failed
 * @param undecided how many of them stayed undecided
 */
public record Tally(String quantity, int judged, int failed, int undecided) {
    /** Nothing counted yet. */
    static Tally none(String quantity) {
        return new Tally(quantity, 0, 0, 0);
    }

    /** With one item more; one that was only described does not count. */
    Tally and(Decision decision) {
        return new Tally(
                quantity,
                judged + (decision == Decision.DESCRIBED ? 0 : 1),
                failed + (decision == Decision.FAIL ? 1 : 0),
                undecided + (decision == Decision.UNDECIDED ? 1 : 0));
    }

    /** The quantities with failed items: {@code level (2 of 12); thd (1 of 12)}. */
    public static String failed(List<Tally> tallies) {
        return text(tallies, t -> t.failed > 0, t -> t.failed);
    }

    /** The quantities with undecided items, in the same way. */
    public static String undecided(List<Tally> tallies) {
        return text(tallies, t -> t.undecided > 0, t -> t.undecided);
    }

    private static String text(List<Tally> tallies, Predicate<Tally> which, ToIntFunction<Tally> count) {
        return tallies.stream()
                .filter(which)
                .map(t -> t.quantity + " (" + count.applyAsInt(t) + " of " + t.judged + ")")
                .collect(Collectors.joining("; "));
    }
}
