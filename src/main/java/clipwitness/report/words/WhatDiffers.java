package clipwitness.report.words;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemQuantity;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What differs between two states, in words: loudness and distortion at the highest setting, or where the highest shows nothing at the
 * setting that differs most; where neither differs anywhere, the asymmetry, the crest or the shape.
 */
final class WhatDiffers {
    private static final double AUDIBLE_STEP = 1; // dB, a change that is just heard (common practice)

    /**
     * One of many figures counts as changed beyond so many expanded uncertainties: of twenty that did not change, one exceeds its own
     * by chance.
     */
    static final double OF_MANY = 1.5;

    /** What lies below a tenth of the usual limit is no difference that anybody means. */
    private static final double NEGLIGIBLE = 0.1;

    private static final List<ItemQuantity> FIRST = List.of(ItemQuantity.LEVEL, ItemQuantity.THD);
    private static final List<ItemQuantity> FURTHER = List.of(ItemQuantity.ASYMMETRY, ItemQuantity.CREST_FACTOR);

    private final JobWording wording;
    private final ItemText texts;
    private final Comparison comparison;
    private final List<Item> telling = new ArrayList<>();
    private final Optional<Item> further;
    private final Optional<Item> shape;

    WhatDiffers(JobWording wording, Comparison comparison) {
        this.wording = wording;
        this.texts = new ItemText(wording);
        this.comparison = comparison;
        FIRST.forEach(q -> telling(q).ifPresent(telling::add));
        this.further = FURTHER.stream().flatMap(q -> clearest(q).stream()).findFirst();
        this.shape = ItemText.worst(ItemText.measured(comparison, ItemQuantity.NULL_DEPTH))
                .filter(WhatDiffers::otherShape);
    }

    /** Whether anything differs beyond its uncertainty. */
    boolean any() {
        return telling.stream().anyMatch(WhatDiffers::significant) || further.isPresent() || shape.isPresent();
    }

    /** Under which condition it is loudness or distortion that is spoken of. */
    Optional<Condition> condition() {
        return telling.stream().findFirst().map(Item::condition);
    }

    /** The words, {@code at full gain it is 5.9 dB quieter and its distortion is 3.1 dB higher}. */
    String text() {
        Map<Condition, List<String>> parts = new LinkedHashMap<>();
        telling.forEach(i -> add(parts, i, first(i)));
        if (telling.stream().noneMatch(WhatDiffers::significant)) {
            if (further.isPresent()) {
                add(parts, further.get(), further(further.get()));
            } else {
                shape.ifPresent(i -> add(parts, i, shape(i)));
            }
        }
        List<String> said = new ArrayList<>();
        parts.forEach((condition, what) -> said.add(wording.under(condition, "what.at", "what", wording.list(what))));
        return said.isEmpty() ? wording.say("what.nothing") : String.join("; ", said);
    }

    private static void add(Map<Condition, List<String>> parts, Item item, String what) {
        parts.computeIfAbsent(item.condition(), k -> new ArrayList<>()).add(what);
    }

    /** Whether the change exceeds its uncertainty and is not next to nothing. */
    static boolean significant(Item item) {
        return exceeds(item, 1);
    }

    private static boolean exceeds(Item item, double uncertainties) {
        double least = NEGLIGIBLE * item.quantity().limit().orElseThrow().standard();
        return ItemText.size(item) > Math.max(least, uncertainties * ItemText.uncertainty(item));
    }

    private Optional<Item> telling(ItemQuantity quantity) {
        Optional<Item> highest = highest(comparison, quantity);
        return highest.filter(WhatDiffers::significant)
                .or(() -> clearest(quantity))
                .or(() -> highest);
    }

    private Optional<Item> clearest(ItemQuantity quantity) {
        return ItemText.measured(comparison, quantity).stream()
                .filter(i -> exceeds(i, OF_MANY))
                .max(Comparator.comparingDouble(ItemText::size));
    }

    /** Beyond the usual limit with its whole uncertainty. */
    private static boolean otherShape(Item item) {
        double limit = item.quantity().limit().orElseThrow().standard();
        return item.change()
                .asValue()
                .filter(v -> !v.isUpperBound())
                .filter(v -> v.number() - ItemText.uncertainty(item) > limit)
                .isPresent();
    }

    /** A change within its uncertainty is called none only where one that a listener just hears would have shown. */
    private String first(Item item) {
        String key = item.quantity() == ItemQuantity.LEVEL ? "what.level" : "what.thd";
        if (significant(item)) {
            boolean more = item.change().value().orElseThrow() > 0;
            return wording.say(key + (more ? ".more" : ".less"), "change", texts.sizeOf(item));
        }
        String end = ItemText.uncertainty(item) <= AUDIBLE_STEP ? ".equal" : ".unknown";
        return wording.say(key + end, "uncertainty", texts.within(item));
    }

    private String further(Item item) {
        return wording.say(
                "what.further",
                "quantity",
                wording.quantity(item.quantity()),
                "change",
                texts.change(item).full());
    }

    private String shape(Item item) {
        double share = 100 * Decibels.toAmplitude(item.change().value().orElseThrow());
        return wording.say("what.shape", "share", wording.numbers().fixed(share, Unit.PERCENT, 1));
    }

    /** The item of a quantity at the highest setting where it has a value. */
    static Optional<Item> highest(Comparison comparison, ItemQuantity quantity) {
        return ItemText.measured(comparison, quantity).stream()
                .max(Comparator.comparingDouble(i -> i.condition().gainPercent().orElse(-1)));
    }
}
