package clipwitness.report.words;

import clipwitness.compare.Comparison;
import clipwitness.compare.Decision;
import clipwitness.compare.Intent;
import clipwitness.compare.Item;
import clipwitness.compare.ItemQuantity;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What an unchanged state kept: the shape of its wave, its distortion, its asymmetry; the level stands in the verdict. */
final class UnchangedFinding implements FindingRule {
    private static final Map<ItemQuantity, String> MOVED = Map.of(
            ItemQuantity.THD, "finding.moved.thd",
            ItemQuantity.ASYMMETRY, "finding.moved.asymmetry");

    private final Wording wording;
    private final ItemText texts;

    UnchangedFinding(Wording wording) {
        this.wording = wording;
        this.texts = new ItemText(wording);
    }

    @Override
    public List<String> of(Comparison comparison) {
        List<String> findings = new ArrayList<>();
        if (comparison.intent() == Intent.UNCHANGED) {
            ItemText.worst(known(comparison, ItemQuantity.NULL_DEPTH))
                    .ifPresent(i -> findings.add(nullDepth(comparison, i)));
            for (ItemQuantity quantity : List.of(ItemQuantity.THD, ItemQuantity.ASYMMETRY)) {
                moved(comparison, quantity).ifPresent(findings::add);
            }
        }
        return findings;
    }

    /** The judged items, none where one of them is undecided: then nothing is known of all settings. */
    private static List<Item> known(Comparison comparison, ItemQuantity quantity) {
        List<Item> items = ItemText.judged(comparison, quantity);
        return items.stream().anyMatch(i -> i.decision() == Decision.UNDECIDED) ? List.of() : items;
    }

    private static String key(String stem, Item worst) {
        return worst.decision() == Decision.FAIL ? stem + ".beyond" : stem;
    }

    /** A null of -38 dB leaves 10^(-38/20) = 1.3 % of the wave's rms; rounded up. */
    private String nullDepth(Comparison comparison, Item item) {
        double depth = item.change().value().orElseThrow();
        double share = 100 * Decibels.toAmplitude(depth);
        return wording.say(
                key("finding.null", item),
                "to",
                wording.label(comparison.to()),
                "from",
                wording.label(comparison.from()),
                "share",
                wording.numbers().atMost(share, Unit.PERCENT, 1),
                "depth",
                wording.numbers().fixed(depth, Unit.DECIBEL, 1),
                "condition",
                wording.spoken(item.condition()),
                "limit",
                texts.limit(item));
    }

    private Optional<String> moved(Comparison comparison, ItemQuantity quantity) {
        List<Item> items = known(comparison, quantity);
        return ItemText.worst(items)
                .map(worst -> wording.say(
                        key(MOVED.get(quantity), worst),
                        "to",
                        wording.label(comparison.to()),
                        "change",
                        texts.extent(worst),
                        "settings",
                        wording.settings(items.stream().map(Item::condition).toList()),
                        "limit",
                        texts.limit(worst)));
    }
}
