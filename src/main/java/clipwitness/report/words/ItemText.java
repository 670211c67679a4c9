package clipwitness.report.words;

import clipwitness.compare.Comparison;
import clipwitness.compare.Decision;
import clipwitness.compare.Item;
import clipwitness.compare.ItemQuantity;
import clipwitness.quantity.NumberParts;
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
        if (item.quantity() == ItemQuantity.POLARITY && item.change().value().isPresent()) {
            return turn(item);
        }
        Amount amount = Amount.ofChange(item.change(), wording.numbers());
        return isPoints(item.quantity()) && !amount.number().isEmpty() ? amount.named(POINTS) : amount;
    }

    /** A turn of phase in whole degrees: its limit is a quarter turn. */
    private Amount turn(Item item) {
        double change = item.change().value().orElseThrow();
        double uncertainty = item.change().expandedUncertainty().orElse(0);
        return new Amount(
                new NumberParts(
                        wording.numbers().signed(change, Unit.ONE, 0),
                        wording.numbers().atMost(uncertainty, Unit.ONE, 0),
                        unit(item.quantity())),
                "");
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

    /**
     * The largest size of some changes of one quantity and the largest of their uncertainties, both rounded up so that "at most" holds:
     * {@code 0.18 ± 0.74 dB}. As many decimals as show the first digit of the uncertainty, so the size is never 0.
     */
    String largest(List<Item> items) {
        double size = items.stream().mapToDouble(ItemText::size).max().orElseThrow();
        double uncertainty =
                items.stream().mapToDouble(ItemText::uncertainty).max().orElseThrow();
        int decimals = decimals(uncertainty);
        ItemQuantity quantity = items.get(0).quantity();
        String number = wording.numbers().atMost(Math.max(size, Math.pow(10, -decimals)), Unit.ONE, decimals);
        return points(
                quantity, number + "\u00A0±\u00A0" + wording.numbers().atMost(uncertainty, quantity.unit(), decimals));
    }

    private static int decimals(double uncertainty) {
        if (!(uncertainty > 0)) {
            return DECIMALS_OF_LIMIT;
        }
        int first = (int) -Math.floor(Math.log10(uncertainty));
        return Math.min(4, first > 0 ? Math.max(first, DECIMALS_OF_LIMIT) : Math.max(0, first + 1));
    }

    /** How far the true change can lie from none, rounded up. */
    String within(Item item) {
        return points(
                item.quantity(),
                wording.numbers()
                        .atMost(size(item) + uncertainty(item), item.quantity().unit(), DECIMALS_OF_LIMIT));
    }

    static double size(Item item) {
        return Math.abs(item.change().value().orElseThrow());
    }

    static double uncertainty(Item item) {
        return item.change().expandedUncertainty().orElse(0);
    }

    /** Size of a difference; where noise bounds one of its figures, what it is at least: {@code at least 40 dB}. */
    String size(Difference difference, Unit unit) {
        return difference.bounded()
                ? wording.say(
                        "amount.least", "amount", wording.numbers().fixed(Math.floor(difference.least()), unit, 0))
                : round(Math.abs(difference.change()), difference.uncertainty(), unit);
    }

    /** Size of a change without its sign, to the place of the first digit of its uncertainty. */
    String sizeOf(Item item) {
        return points(
                item.quantity(),
                round(size(item), uncertainty(item), item.quantity().unit()));
    }

    /** A figure to the place of the first digit of its uncertainty, whole where that is above 1. */
    String round(double value, double uncertainty, Unit unit) {
        int decimals = uncertainty > 0 ? (int) Math.max(0, Math.min(4, -Math.floor(Math.log10(uncertainty)))) : 2;
        return wording.numbers().fixed(value, unit, decimals);
    }

    /** Where some items were judged, {@code all five gain settings}. */
    String settings(List<Item> items, Comparison comparison) {
        return wording.settings(
                items.stream().map(Item::condition).toList(),
                comparison.items().stream().map(Item::condition).toList());
    }

    /** The items of a quantity that were judged and have a value. */
    static List<Item> judged(Comparison comparison, ItemQuantity quantity) {
        return measured(comparison, quantity).stream().filter(Item::judged).toList();
    }

    /** The items of a quantity that have a value. */
    static List<Item> measured(Comparison comparison, ItemQuantity quantity) {
        return comparison.items().stream()
                .filter(i -> i.quantity() == quantity && i.change().value().isPresent())
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
