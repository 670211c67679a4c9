package clipwitness.report.words;

import clipwitness.compare.Comparison;
import clipwitness.compare.Decision;
import clipwitness.compare.Intent;
import clipwitness.compare.Item;
import clipwitness.compare.ItemQuantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A comparison's verdict as a sentence for the first page. */
public final class VerdictText {
    private static final double AUDIBLE_STEP = 1; // dB, a change that is just heard (common practice)

    private final Wording wording;
    private final ItemText texts;

    /** Sentences in a wording. */
    public VerdictText(Wording wording) {
        this.wording = wording;
        this.texts = new ItemText(wording);
    }

    /** The verdict's word: pass, fail, undecided, described. */
    public String word(Decision decision) {
        return wording.say("verdict." + decision.code());
    }

    /** The sentence. */
    public String sentence(Comparison comparison) {
        if (comparison.items().isEmpty()) {
            return wording.say("verdict.nothing", "reason", comparison.reason().orElse(""));
        }
        return switch (comparison.verdict()) {
            case PASS -> comparison.intent() == Intent.CHANGED ? changedPass(comparison) : unchangedPass(comparison);
            case FAIL -> about(comparison, "fail");
            case UNDECIDED -> about(comparison, "undecided");
            case DESCRIBED -> described(comparison);
        };
    }

    private String unchangedPass(Comparison comparison) {
        String items = wording.items(ItemText.decided(comparison, Decision.PASS).size());
        List<Item> levels = ItemText.judged(comparison, ItemQuantity.LEVEL);
        Optional<Item> worst = ItemText.worst(levels);
        if (worst.isEmpty()) {
            return wording.say("verdict.unchanged.pass.plain", "items", items);
        }
        return wording.say(
                "verdict.unchanged.pass",
                "settings",
                wording.settings(levels.stream().map(Item::condition).toList()),
                "level",
                texts.extent(worst.get()),
                "limit",
                texts.limit(worst.get()),
                "items",
                items);
    }

    private String changedPass(Comparison comparison) {
        List<String> judged =
                comparison.judged().stream().map(wording::quantity).toList();
        return wording.say("verdict.changed.pass", "what", what(comparison), "judged", wording.list(judged));
    }

    private String described(Comparison comparison) {
        if (comparison.intent() == Intent.UNCHANGED) {
            return wording.say(
                    "verdict.unchanged.none", "reason", comparison.reason().orElse(""));
        }
        return wording.say("verdict." + comparison.intent().code() + ".described", "what", what(comparison));
    }

    private String about(Comparison comparison, String decision) {
        Decision wanted = comparison.verdict();
        String key = "verdict." + comparison.intent().code() + "." + decision;
        Optional<Item> worst = ItemText.worst(ItemText.decided(comparison, wanted));
        if (worst.isEmpty()) {
            return wording.say(
                    "verdict.unchanged.none", "reason", comparison.reason().orElse(""));
        }
        Item item = worst.get();
        String condition = wording.spoken(item.condition());
        String quantity = wording.quantity(item.quantity());
        if (item.change().value().isEmpty()) {
            return wording.say(
                    key + ".refused",
                    "condition",
                    condition,
                    "quantity",
                    quantity,
                    "reason",
                    item.change().reason().orElse(""));
        }
        return wording.say(
                key,
                "condition",
                condition,
                "quantity",
                quantity,
                "change",
                texts.change(item).full(),
                "limit",
                texts.limit(item));
    }

    /** What else did not pass, and what would decide it. */
    public List<String> more(Comparison comparison) {
        List<String> more = new ArrayList<>();
        long judged = comparison.items().stream().filter(Item::judged).count();
        for (Decision decision : List.of(Decision.FAIL, Decision.UNDECIDED)) {
            List<Item> items = ItemText.decided(comparison, decision);
            if (items.size() > 1 || (items.size() == 1 && decision != comparison.verdict())) {
                more.add(wording.say(
                        "verdict.more." + decision.code(),
                        "items",
                        wording.items(items.size()),
                        "all",
                        Long.toString(judged),
                        "list",
                        texts.where(items)));
            }
        }
        if (comparison.verdict() == Decision.UNDECIDED) {
            remedy(comparison).ifPresent(more::add);
        }
        return more;
    }

    /** What would decide the item that needs most. */
    private static Optional<String> remedy(Comparison comparison) {
        return ItemText.decided(comparison, Decision.UNDECIDED).stream()
                .filter(i -> i.remedy().isPresent())
                .max(Comparator.comparingDouble(VerdictText::need))
                .flatMap(Item::remedy);
    }

    private static double need(Item item) {
        double uncertainty = item.change().expandedUncertainty().orElse(Double.POSITIVE_INFINITY);
        return uncertainty / Math.abs(item.limit().orElse(1));
    }

    /** How loud and how distorted, at the highest setting. */
    private String what(Comparison comparison) {
        List<String> parts = new ArrayList<>();
        highest(comparison, ItemQuantity.LEVEL).ifPresent(i -> parts.add(what(i, "what.level")));
        highest(comparison, ItemQuantity.THD).ifPresent(i -> parts.add(what(i, "what.thd")));
        return parts.isEmpty() ? wording.say("what.nothing") : wording.list(parts);
    }

    /** What changed. A change within its uncertainty is called none only where one that a listener just hears would have shown. */
    private String what(Item item, String key) {
        double change = item.change().value().orElseThrow();
        double uncertainty = item.change().expandedUncertainty().orElse(0);
        String condition = wording.spoken(item.condition());
        if (Math.abs(change) <= uncertainty) {
            String end = uncertainty <= AUDIBLE_STEP ? ".equal" : ".unknown";
            return wording.say(key + end, "condition", condition, "uncertainty", texts.within(item));
        }
        return wording.say(key + (change > 0 ? ".more" : ".less"), "condition", condition, "change", texts.size(item));
    }

    static Optional<Item> highest(Comparison comparison, ItemQuantity quantity) {
        return comparison.items().stream()
                .filter(i -> i.quantity() == quantity && i.change().value().isPresent())
                .max(Comparator.comparingDouble(i -> i.condition().gainPercent().orElse(-1)));
    }
}
