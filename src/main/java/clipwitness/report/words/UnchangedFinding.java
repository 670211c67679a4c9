package clipwitness.report.words;

import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemQuantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What an unchanged state kept: the shape of its wave, its distortion, its asymmetry; the level stands in the verdict. */
final class UnchangedFinding implements FindingRule {
    private static final Map<ItemQuantity, String> MOVED = Map.of(
            ItemQuantity.THD, "finding.moved.thd",
            ItemQuantity.ASYMMETRY, "finding.moved.asymmetry");

    private final JobWording wording;
    private final ItemText texts;
    private final NullText nulls;

    UnchangedFinding(JobWording wording) {
        this.wording = wording;
        this.texts = new ItemText(wording);
        this.nulls = new NullText(wording);
    }

    @Override
    public List<String> of(Comparison comparison) {
        List<String> findings = new ArrayList<>();
        if (comparison.intent() == Intent.UNCHANGED) {
            nullDepth(comparison).ifPresent(findings::add);
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

    private static boolean fails(List<Item> items) {
        return items.stream().anyMatch(i -> i.decision() == Decision.FAIL);
    }

    private Optional<String> nullDepth(Comparison comparison) {
        List<Item> items = known(comparison, ItemQuantity.NULL_DEPTH);
        return items.isEmpty() ? Optional.empty() : Optional.of(nullDepth(comparison, items));
    }

    private String nullDepth(Comparison comparison, List<Item> items) {
        Item worst = NullText.worst(items);
        boolean bound = NullText.isBound(worst);
        boolean fails = fails(items);
        return wording.tell(
                "finding.null" + (fails ? ".beyond" : bound ? ".bound" : ""),
                "to",
                wording.label(comparison.to()),
                "from",
                wording.label(comparison.from()),
                "share",
                fails ? nulls.share(worst) : nulls.most(worst),
                "depth",
                bound ? nulls.bound(worst) : texts.said(worst),
                "condition",
                wording.spoken(worst.condition()),
                "settings",
                texts.settings(items, comparison),
                "limit",
                texts.limit(worst));
    }

    private Optional<String> moved(Comparison comparison, ItemQuantity quantity) {
        List<Item> items = known(comparison, quantity);
        if (items.isEmpty()) {
            return Optional.empty();
        }
        List<Item> failing =
                items.stream().filter(i -> i.decision() == Decision.FAIL).toList();
        List<Item> told = failing.isEmpty() ? items : failing;
        String moved = wording.tell(
                MOVED.get(quantity) + (failing.isEmpty() ? "" : ".beyond"),
                "to",
                wording.label(comparison.to()),
                "change",
                texts.largest(told),
                "settings",
                texts.settings(told, items, comparison),
                "limit",
                texts.limit(items.get(0)));
        return Optional.of(isPart(comparison, items) ? wording.say("finding.moved.part", "sentence", moved) : moved);
    }

    /** Whether distortion was left unjudged at some setting because there is next to none in both states. */
    private static boolean isPart(Comparison comparison, List<Item> judged) {
        ItemQuantity quantity = judged.get(0).quantity();
        return quantity == ItemQuantity.THD
                && comparison.items().stream()
                        .anyMatch(i -> i.quantity() == quantity
                                && !i.judged()
                                && i.change().value().isPresent());
    }
}
