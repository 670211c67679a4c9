package clipwitness.report.words;

import clipwitness.compare.Comparison;
import clipwitness.compare.Decision;
import clipwitness.compare.Item;
import clipwitness.compare.ItemQuantity;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Figures of a comparison as text. */
public final class ItemText {
    private static final int DECIMALS_OF_LIMIT = 2;
    private static final String POINTS = "points";

    private final Wording wording;

    /** Texts in a wording. */
    public ItemText(Wording wording) {
        this.wording = wording;
    }

    /** The change with sign, uncertainty and unit. */
    public Amount change(Item item) {
        Amount amount = Amount.ofChange(item.change(), wording.numbers());
        return isPoints(item.quantity()) && !amount.number().isEmpty() ? amount.named(POINTS) : amount;
    }

    private static boolean isPoints(ItemQuantity quantity) {
        return quantity == ItemQuantity.ASYMMETRY;
    }

    /** Unit of a quantity's changes. */
    public static String unit(ItemQuantity quantity) {
        if (quantity == ItemQuantity.POLARITY) {
            return "°";
        }
        return points(quantity, quantity.unit().symbol());
    }

    /** A difference of percentages counts in points. */
    private static String points(ItemQuantity quantity, String text) {
        return isPoints(quantity) ? text.replace(Unit.PERCENT.symbol(), POINTS) : text;
    }

    /** The limit of an item, {@code 0.50 dB}; empty where there is none. */
    public String limit(Item item) {
        return item.limit().isEmpty() ? "" : limit(item.quantity(), item.limit().getAsDouble());
    }

    /** A limit. */
    public String limit(ItemQuantity quantity, double limit) {
        return quantity == ItemQuantity.POLARITY
                ? wording.numbers().nominal(limit, quantity.unit())
                : points(quantity, wording.numbers().fixed(limit, quantity.unit(), DECIMALS_OF_LIMIT));
    }

    /** Size of a change without its sign, rounded up so that "at most" holds. */
    String extent(Item item) {
        return extent(item, 0);
    }

    /** How far the true change can lie from none, rounded up. */
    String within(Item item) {
        return extent(item, item.change().expandedUncertainty().orElse(0));
    }

    private String extent(Item item, double more) {
        double size = Math.abs(item.change().value().orElseThrow()) + more;
        return points(
                item.quantity(), wording.numbers().atMost(size, item.quantity().unit(), DECIMALS_OF_LIMIT));
    }

    /** Size of a change without its sign, to the place of the first digit of its uncertainty. */
    String size(Item item) {
        double size = Math.abs(item.change().value().orElseThrow());
        return points(
                item.quantity(),
                round(
                        size,
                        item.change().expandedUncertainty().orElse(0),
                        item.quantity().unit()));
    }

    /** A figure to the place of the first digit of its uncertainty, whole where that is above 1. */
    String round(double value, double uncertainty, Unit unit) {
        int decimals = uncertainty > 0 ? (int) Math.max(0, Math.min(4, -Math.floor(Math.log10(uncertainty)))) : 2;
        return wording.numbers().fixed(value, unit, decimals);
    }

    /** The items of a quantity that were judged and have a value. */
    static List<Item> judged(Comparison comparison, ItemQuantity quantity) {
        return comparison.items().stream()
                .filter(i -> i.quantity() == quantity
                        && i.judged()
                        && i.change().value().isPresent())
                .toList();
    }

    /** The item that comes nearest to its limit, or lies farthest beyond it. */
    static Optional<Item> worst(List<Item> items) {
        return items.stream().max(Comparator.comparingDouble(ItemText::severity));
    }

    /** Change over limit; for null depth, where less is better, how far it stays above its limit. */
    static double severity(Item item) {
        double change = item.change().value().orElse(Double.NEGATIVE_INFINITY);
        double limit = item.limit().orElse(1);
        return item.quantity() == ItemQuantity.NULL_DEPTH ? Math.exp((change - limit) / 20) : Math.abs(change) / limit;
    }

    /** The items with a decision. */
    static List<Item> decided(Comparison comparison, Decision decision) {
        return comparison.items().stream().filter(i -> i.decision() == decision).toList();
    }

    /** {@code level at 50 % gain and full gain, asymmetry at full gain}. */
    String where(List<Item> items) {
        Map<ItemQuantity, List<Item>> byQuantity = new LinkedHashMap<>();
        items.forEach(i ->
                byQuantity.computeIfAbsent(i.quantity(), k -> new ArrayList<>()).add(i));
        return String.join(
                "; ",
                byQuantity.entrySet().stream()
                        .map(e -> wording.quantity(e.getKey())
                                + " ("
                                + wording.list(e.getValue().stream()
                                        .map(i -> wording.spoken(i.condition()))
                                        .distinct()
                                        .toList())
                                + ")")
                        .toList());
    }
}
