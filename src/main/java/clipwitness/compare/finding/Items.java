package clipwitness.compare.finding;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Chooses among the items of a comparison: those that have a value, those that represent the others. */
public final class Items {
    private Items() {}

    /** Size of the change, in the unit of the item; the item must have a value. */
    public static double size(Item item) {
        return Math.abs(item.change().value().orElseThrow());
    }

    /** Expanded uncertainty of the change; 0 where there is none. */
    public static double uncertainty(Item item) {
        return item.change().expandedUncertainty().orElse(0);
    }

    /** Whether the figure fell. */
    public static boolean isFall(Item item) {
        return item.change().value().orElseThrow() < 0;
    }

    /** Whether noise hides the change, so that only its bound is known. */
    public static boolean isBound(Item item) {
        return item.change().asValue().filter(Measured.Value::isUpperBound).isPresent();
    }

    /** The limit that holds for an item: its own, else the usual one of its quantity. */
    public static double limit(Item item) {
        return item.limit()
                .orElseGet(() -> item.quantity().limit().orElseThrow().standard());
    }

    /** The items of a quantity that have a value. */
    public static List<Item> measured(Comparison comparison, ItemQuantity quantity) {
        return comparison.items().stream()
                .filter(i -> i.quantity() == quantity && i.change().value().isPresent())
                .toList();
    }

    /** The items of a quantity that were judged and have a value. */
    public static List<Item> judged(Comparison comparison, ItemQuantity quantity) {
        return measured(comparison, quantity).stream().filter(Item::judged).toList();
    }

    /** The items with a decision. */
    public static List<Item> decided(Comparison comparison, Decision decision) {
        return comparison.items().stream().filter(i -> i.decision() == decision).toList();
    }

    /** The conditions under which waves were compared. */
    public static List<Condition> conditionsOfWaves(Comparison comparison) {
        return comparison.items().stream()
                .filter(i -> i.quantity().isOfWaves())
                .map(Item::condition)
                .toList();
    }

    /** The conditions of some items. */
    public static List<Condition> conditions(List<Item> items) {
        return items.stream().map(Item::condition).toList();
    }

    /** The item of a quantity with a value under one condition. */
    public static Optional<Item> at(Comparison comparison, Condition condition, ItemQuantity quantity) {
        return measured(comparison, quantity).stream()
                .filter(i -> i.condition().equals(condition))
                .findFirst();
    }

    /** The item of a quantity at the highest setting where it has a value. */
    public static Optional<Item> highest(Comparison comparison, ItemQuantity quantity) {
        return measured(comparison, quantity).stream()
                .max(Comparator.comparingDouble(i -> i.condition().gainPercent().orElse(-1)));
    }

    /** Of changes of one quantity, one or more, the one that reaches farthest with its whole uncertainty. */
    public static Item farthest(List<Item> items) {
        return items.stream()
                .max(Comparator.comparingDouble(i -> size(i) + uncertainty(i)))
                .orElseThrow();
    }

    /** Of null depths, one or more, the one with the most that may be left, its uncertainty included. */
    public static Item mostLeft(List<Item> items) {
        return items.stream().max(Comparator.comparingDouble(Items::reach)).orElseThrow();
    }

    /** A null depth with its uncertainty, dB: what is left lies below it. */
    public static double reach(Item item) {
        return item.change().value().orElseThrow() + uncertainty(item);
    }

    /** The item that comes nearest to its limit, or lies farthest beyond it. */
    public static Optional<Item> worst(List<Item> items) {
        return items.stream().max(Comparator.comparingDouble(Items::severity));
    }

    /** Change over limit; for null depth, where less is better, how far it stays above its limit. */
    private static double severity(Item item) {
        double change = item.change().value().orElse(Double.NEGATIVE_INFINITY);
        double limit = item.limit().orElse(1);
        return item.quantity() == ItemQuantity.NULL_DEPTH ? Math.exp((change - limit) / 20) : Math.abs(change) / limit;
    }

    /** The undecided item that needs most before it can be decided, among those that say what would decide them. */
    public static Optional<Item> neediest(Comparison comparison) {
        return decided(comparison, Decision.UNDECIDED).stream()
                .filter(i -> i.remedy().isPresent())
                .max(Comparator.comparingDouble(Items::need));
    }

    private static double need(Item item) {
        double uncertainty = item.change().expandedUncertainty().orElse(Double.POSITIVE_INFINITY);
        return uncertainty / Math.abs(item.limit().orElse(1));
    }
}
