package clipwitness.compare.plan;

import clipwitness.compare.result.ReadyItem;
import clipwitness.quantity.ItemQuantity;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The smallest change that planned captures can show.
 *
 * @param quantity what is judged
 * @param limit    limit, in the unit of the quantity
 * @param stops    smallest change at the end stops of the gain control, or where it does not matter
 * @param between  the same between them, where the control is set by eye
 */
public record Reach(ItemQuantity quantity, double limit, Optional<Smallest> stops, Optional<Smallest> between) {
    /**
     * A smallest change.
     *
     * @param change     in the unit of the quantity
     * @param sufficient whether it is within the limit
     */
    public record Smallest(double change, boolean sufficient) {}

    /** What items tell about one quantity; the worst of several counts. */
    static Reach of(ItemQuantity quantity, double limit, List<ReadyItem> items) {
        return new Reach(
                quantity, limit, worst(quantity, items, i -> !isBetween(i)), worst(quantity, items, Reach::isBetween));
    }

    /** Whether an item is about a position that the eye sets. */
    static boolean isBetween(ReadyItem item) {
        double gain = item.condition().gainPercent().orElse(0);
        return gain > 0 && gain < 100;
    }

    private static Optional<Smallest> worst(ItemQuantity quantity, List<ReadyItem> items, Predicate<ReadyItem> which) {
        return items.stream()
                .filter(i -> i.quantity() == quantity && which.test(i))
                .filter(i -> i.smallestChange().value().isPresent())
                .max(Comparator.comparingDouble(i -> i.smallestChange().value().getAsDouble()))
                .map(i -> new Smallest(i.smallestChange().value().getAsDouble(), i.sufficient()));
    }

    /** Whether the limit can be kept everywhere. */
    public boolean sufficient() {
        return stops.map(Smallest::sufficient).orElse(true)
                && between.map(Smallest::sufficient).orElse(true);
    }
}
