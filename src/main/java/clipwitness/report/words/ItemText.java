package clipwitness.report.words;

import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemQuantity;
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
    private static final int LEAST_DECIMALS = 2;

    private final JobWording wording;

    /** Texts in a wording. */
    public ItemText(JobWording wording) {
        this.wording = wording;
    }

    /** The change with sign, uncertainty and unit. */
    public Amount change(Item item) {
        Amount amount = Amount.ofChange(item.change(), wording.numbers());
        return amount.number().isEmpty() ? amount : amount.named(item.quantity().symbol());
    }

    /** The change as a sentence says it: a turn of phase in whole degrees. */
    String said(Item item) {
        boolean turned = item.quantity() == ItemQuantity.POLARITY
                && item.change().value().isPresent();
        return (turned ? turn(item) : change(item)).full();
    }

    /** A turn of phase in whole degrees: its limit is a quarter turn. */
    private Amount turn(Item item) {
        double change = item.change().value().orElseThrow();
        double uncertainty = item.change().expandedUncertainty().orElse(0);
        return new Amount(
                new NumberParts(
                        wording.numbers().signed(change, Unit.ONE, 0),
                        wording.numbers().atMost(uncertainty, Unit.ONE, 0),
                        item.quantity().symbol()),
                "");
    }

    /** A number with the unit of a quantity's changes behind it. */
    private static String withUnit(String number, ItemQuantity quantity) {
        return new NumberParts(number, "", quantity.symbol()).text();
    }

    /** The limit of an item as somebody set it, {@code 0.5 dB}; empty where there is none. */
    public String limit(Item item) {
        return item.limit().isEmpty() ? "" : limit(item.quantity(), item.limit().getAsDouble());
    }

    /** A limit. */
    public String limit(ItemQuantity quantity, double limit) {
        return withUnit(wording.numbers().nominal(limit, Unit.ONE), quantity);
    }

    /**
     * Of some changes of one quantity the size of the one that lies nearest to its limit with its whole uncertainty, or farthest beyond,
     * both rounded up so that "at most" holds: {@code 0.18 ± 0.74 dB}. As many decimals as show the first digit of the uncertainty, so
     * the size is never 0.
     */
    String largest(List<Item> items) {
        Item largest = items.stream()
                .max(Comparator.comparingDouble(i -> size(i) + uncertainty(i)))
                .orElseThrow();
        double uncertainty = uncertainty(largest);
        int decimals = decimals(uncertainty);
        return new NumberParts(
                        wording.numbers().atMost(Math.max(size(largest), Math.pow(10, -decimals)), Unit.ONE, decimals),
                        wording.numbers().atMost(uncertainty, Unit.ONE, decimals),
                        largest.quantity().symbol())
                .full();
    }

    private static int decimals(double uncertainty) {
        if (!(uncertainty > 0)) {
            return LEAST_DECIMALS;
        }
        int first = (int) -Math.floor(Math.log10(uncertainty));
        return Math.min(4, first > 0 ? Math.max(first, LEAST_DECIMALS) : Math.max(0, first + 1));
    }

    /** How far the true change can lie from none, rounded up. */
    String within(Item item) {
        return withUnit(
                wording.numbers().atMost(size(item) + uncertainty(item), Unit.ONE, LEAST_DECIMALS), item.quantity());
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
        return withUnit(round(size(item), uncertainty(item), Unit.ONE), item.quantity());
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

    /** Where some of the items that were judged fail, {@code four of five gain settings}. */
    String settings(List<Item> failing, List<Item> judged, Comparison comparison) {
        return failing.size() == judged.size()
                ? settings(judged, comparison)
                : wording.settingsOf(
                        failing.stream().map(Item::condition).toList(),
                        judged.stream().map(Item::condition).toList());
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

    /** {@code level (50 % gain and full gain); asymmetry (full gain)}; without places in a job that has only one. */
    String listed(List<Item> items) {
        Map<ItemQuantity, List<Item>> byQuantity = new LinkedHashMap<>();
        items.forEach(i ->
                byQuantity.computeIfAbsent(i.quantity(), k -> new ArrayList<>()).add(i));
        return String.join(
                "; ",
                byQuantity.entrySet().stream()
                        .map(e -> wording.quantity(e.getKey()) + where(e.getValue()))
                        .toList());
    }

    private String where(List<Item> items) {
        List<String> places = items.stream()
                .map(i -> wording.spoken(i.condition()))
                .distinct()
                .toList();
        return wording.several() ? " (" + wording.list(places) + ")" : "";
    }
}
