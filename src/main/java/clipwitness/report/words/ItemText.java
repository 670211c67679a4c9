package clipwitness.report.words;

import clipwitness.compare.finding.Difference;
import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.Settings;
import clipwitness.compare.finding.Told;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.NumberParts;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Figures of a comparison as text. */
public final class ItemText {
    private static final String SEPARATOR = "; ";
    private static final int LEAST_DECIMALS = 2;
    private static final int MOST_DECIMALS = 1;
    private static final int FINEST_DECIMALS = 3;

    /** What is smaller would be printed as 0.0 or 0.1. */
    private static final double SMALL = 0.1;

    /** An uncertainty that begins with 1 to 4 is shown with two digits, as in the tables: rounded up to one it would be larger by a fifth or more. */
    private static final double FIRST_DIGIT_ALONE = 5;

    /** What is smaller still is nothing. */
    private static final double LEAST = 0.005;

    private final JobWording wording;

    /** Texts in a wording. */
    public ItemText(JobWording wording) {
        this.wording = wording;
    }

    /** The change with sign, uncertainty and unit. */
    public Amount change(Item item) {
        Amount amount = Amount.ofChange(item.change(), wording.numbers());
        return amount.number().isEmpty() ? amount : amount.named(wording.unit(item.quantity()));
    }

    /** The same in a list of decisions: a change that says nothing is a dash with the uncertainty that hides it. */
    public Amount listed(Item item) {
        Amount amount = change(item);
        return amount.number().isEmpty() && item.change().value().isPresent()
                ? new Amount(new NumberParts("–", hidden(item), wording.unit(item.quantity())), Optional.empty())
                : amount;
    }

    /** How far a change that is not told may lie away, {@code 19}. */
    private String hidden(Item item) {
        return wording.numbers().atMost(Items.uncertainty(item), Unit.ONE, 0);
    }

    /** The uncertainty that hides a change; empty where the change is told. */
    String hiding(Item item) {
        return change(item).number().isEmpty() ? withUnit(hidden(item), item.quantity()) : "";
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
                        wording.unit(item.quantity())),
                Optional.empty());
    }

    /** A number with the unit of a quantity's changes behind it. */
    private String withUnit(String number, ItemQuantity quantity) {
        return new NumberParts(number, "", wording.unit(quantity)).text();
    }

    /** The limit of an item as somebody set it, {@code 0.5 dB}; empty where there is none. */
    public String limit(Item item) {
        return item.limit().isEmpty() ? "" : limit(item.quantity(), item.limit().getAsDouble());
    }

    /** A limit. */
    public String limit(ItemQuantity quantity, double limit) {
        return withUnit(wording.numbers().nominal(limit, Unit.ONE), quantity);
    }

    /** How far the true change can lie from none, rounded up. */
    String within(Item item) {
        return withUnit(
                wording.numbers()
                        .atMost(
                                Items.size(item) + Items.uncertainty(item),
                                Unit.ONE,
                                NumberText.decimals(Items.uncertainty(item), LEAST_DECIMALS)),
                item.quantity());
    }

    /** Size of a difference of levels; where noise bounds one of its figures, or it is known to half or double, what it is at least: {@code at least 40 dB}. */
    String size(Difference difference, Unit unit) {
        if (difference.bounded()) {
            return least(difference.least(), unit);
        }
        double size = Math.abs(difference.change());
        return Told.isAtLeast(size, difference.uncertainty())
                ? least(Told.least(size, difference.uncertainty()), unit)
                : round(size, difference.uncertainty(), unit);
    }

    private String least(double least, Unit unit) {
        return wording.say("amount.least", "amount", wording.numbers().fixed(least, unit, 0));
    }

    /** Whether only what a change is at least can be told. */
    boolean isAtLeast(Item item) {
        return item.change().asValue().filter(Told::isAtLeast).isPresent();
    }

    /** What a change is at least, in whole units: {@code at least 24 dB}. */
    String least(Item item) {
        double least = Told.least(Items.size(item), Items.uncertainty(item));
        return wording.say(
                "amount.least", "amount", withUnit(wording.numbers().fixed(least, Unit.ONE, 0), item.quantity()));
    }

    /** Size of a change without its sign, to the place of the first digit of its uncertainty. */
    String sizeOf(Item item) {
        return isAtLeast(item) ? least(item) : plainSize(item);
    }

    private String plainSize(Item item) {
        return withUnit(round(Items.size(item), Items.uncertainty(item), Unit.ONE), item.quantity());
    }

    /** A figure to the place of the first digit of its uncertainty, whole where that is above 1; nobody hears or sees more than one decimal. */
    String round(double value, double uncertainty, Unit unit) {
        int most = Math.abs(value) < SMALL && Math.abs(value) >= LEAST ? LEAST_DECIMALS : MOST_DECIMALS;
        int decimals = uncertainty > 0 ? (int) Math.max(0, Math.min(most, -Math.floor(Math.log10(uncertainty)))) : most;
        return wording.numbers().fixed(value, unit, decimals);
    }

    /**
     * Size of a change with its uncertainty, to the first digit of that, rounded up, or to two where the first is 1 to 4: {@code 5.49 ± 0.43 dB}. A failing change that
     * so would seem to lie within its limit has more digits; one that is known to half or double is told by what it is at least.
     */
    String spread(Item item) {
        double limit = item.decision() == Decision.FAIL ? item.limit().orElse(0) : 0;
        return isAtLeast(item)
                ? least(item)
                : spread(Items.size(item), Items.uncertainty(item), wording.unit(item.quantity()), Math.max(0, limit));
    }

    /** A figure with its uncertainty, to the first digit of that, which is rounded up, or to two. */
    String spread(double value, double uncertainty, String unit) {
        return spread(value, uncertainty, unit, 0);
    }

    private String spread(double value, double uncertainty, String unit, double limit) {
        int decimals = uncertainty > 0
                ? (int) Math.max(0, Math.min(LEAST_DECIMALS, -Math.floor(Math.log10(uncertainty / FIRST_DIGIT_ALONE))))
                : MOST_DECIMALS;
        while (decimals < FINEST_DECIMALS
                && value - uncertainty > limit
                && !isBeyond(value, uncertainty, limit, decimals)) {
            decimals++;
        }
        return new NumberParts(
                        wording.numbers().fixed(value, Unit.ONE, decimals),
                        uncertainty > 0
                                ? wording.numbers().fixed(printed(uncertainty, decimals), Unit.ONE, decimals)
                                : "",
                        unit)
                .full();
    }

    /** An uncertainty to some decimals: rounded as in the tables where these show two digits of it, else up. */
    private static double printed(double uncertainty, int decimals) {
        boolean two = uncertainty * Math.pow(10, decimals) >= 10;
        return BigDecimal.valueOf(uncertainty)
                .setScale(decimals, two ? RoundingMode.HALF_UP : RoundingMode.UP)
                .doubleValue();
    }

    /** Whether a figure lies beyond a limit as it is printed. */
    private static boolean isBeyond(double value, double uncertainty, double limit, int decimals) {
        return BigDecimal.valueOf(value)
                        .setScale(decimals, RoundingMode.HALF_UP)
                        .subtract(BigDecimal.valueOf(printed(uncertainty, decimals)))
                        .compareTo(BigDecimal.valueOf(limit))
                > 0;
    }

    /** Where something holds: {@code all five gain settings}, {@code four of five gain settings}. */
    String settings(Settings settings) {
        return settings.all()
                ? wording.settings(settings.judged(), settings.captured())
                : wording.settingsOf(settings.meant(), settings.judged());
    }

    /**
     * {@code level and asymmetry of the peaks (50 % gain and full gain); crest factor (full gain)}: places that several quantities share are named once;
     * without places in a job that has only one.
     */
    String listed(List<Item> items) {
        Map<ItemQuantity, List<Item>> byQuantity = new LinkedHashMap<>();
        items.forEach(i ->
                byQuantity.computeIfAbsent(i.quantity(), k -> new ArrayList<>()).add(i));
        Map<String, List<String>> byPlaces = new LinkedHashMap<>();
        byQuantity.forEach((quantity, some) -> byPlaces.computeIfAbsent(wording.places(some), k -> new ArrayList<>())
                .add(wording.quantity(quantity)));
        return String.join(
                SEPARATOR,
                byPlaces.entrySet().stream()
                        .map(e -> e.getKey().isEmpty()
                                ? String.join(SEPARATOR, e.getValue())
                                : wording.list(e.getValue()) + " (" + e.getKey() + ")")
                        .toList());
    }
}
