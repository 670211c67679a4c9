package clipwitness.compare.rule;

import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.Mark;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.quantity.ItemQuantity;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The four marks of a comparison: sound, noise, treble, rails, each with its gravest decision. The item that tells most is the one with the gravest decision
 * that uses most of its limit; of a sound that passes it is the level.
 */
public final class Marks {
    private static final List<Decision> GRAVEST_FIRST =
            List.of(Decision.FAIL, Decision.UNDECIDED, Decision.PASS, Decision.DESCRIBED);

    private Marks() {}

    /** The comparison that the first page marks: that of the first state which must still be what it was, else the first judged one. */
    public static Optional<Comparison> marked(JobResults results) {
        return results.comparisons().stream()
                .filter(c -> c.intent() != Intent.DESCRIBED)
                .min(Comparator.comparing((Comparison c) -> c.intent() != Intent.UNCHANGED));
    }

    /** The marks of a comparison, one for each part. */
    public static List<Mark> of(Comparison comparison) {
        return Arrays.stream(Mark.Part.values()).map(p -> of(p, comparison)).toList();
    }

    private static Mark of(Mark.Part part, Comparison comparison) {
        List<Item> items = comparison.items().stream()
                .filter(part::isAbout)
                .filter(i -> !keepsPolarity(i))
                .toList();
        Optional<Decision> gravest = GRAVEST_FIRST.stream()
                .filter(d -> items.stream().anyMatch(i -> i.decision() == d))
                .findFirst();
        return new Mark(part, gravest, gravest.flatMap(d -> telling(part, items, d)));
    }

    /** A sound that is meant to change may keep its polarity: that says nothing of whether the sound is unchanged. */
    private static boolean keepsPolarity(Item item) {
        return item.quantity() == ItemQuantity.POLARITY && item.decision() == Decision.PASS;
    }

    private static Optional<Item> telling(Mark.Part part, List<Item> items, Decision decision) {
        List<Item> known = items.stream()
                .filter(i -> i.decision() == decision && i.change().asValue().isPresent())
                .toList();
        if (decision == Decision.FAIL || decision == Decision.UNDECIDED) {
            return Items.worst(known); // the one that the verdict names
        }
        return known.stream()
                .filter(i -> part != Mark.Part.SOUND || i.quantity() == ItemQuantity.LEVEL)
                .max(Comparator.comparingDouble(Marks::used));
    }

    /** Share of its limit that an item uses with its whole uncertainty. */
    private static double used(Item item) {
        double limit = Math.abs(Items.limit(item));
        return (Items.size(item) + Items.uncertainty(item)) / limit;
    }
}
