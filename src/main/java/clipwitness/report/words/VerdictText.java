package clipwitness.report.words;

import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.Settings;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemSubject;
import clipwitness.compare.rule.DiffersRule;
import clipwitness.compare.rule.OtherDriveRule;
import clipwitness.compare.rule.SpokenCondition;
import clipwitness.quantity.ItemQuantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A comparison's verdict as a sentence for the first page. */
public final class VerdictText {
    private final JobWording wording;
    private final ItemText texts;
    private final DriveText drives;
    private final OtherDriveRule drive;

    /** Sentences in a wording. */
    public VerdictText(JobWording wording) {
        this.wording = wording;
        this.texts = new ItemText(wording);
        this.drives = new DriveText(wording);
        this.drive = new OtherDriveRule(wording.results());
    }

    /** The verdict's word: pass, fail, undecided, described. */
    public String word(Decision decision) {
        return wording.say("verdict." + decision.code());
    }

    /**
     * The verdict's word on the first page. Where a state was meant to differ, it says what the verdict is about, so that it is not read as praise
     * of the sound: {@code Pass: polarity}.
     */
    public String head(Comparison comparison) {
        String word = word(comparison.verdict());
        return isNarrow(comparison) ? wording.say("verdict.narrow", "word", word, "judged", judged(comparison)) : word;
    }

    /** Whether the verdict is about less than the sound. */
    public static boolean isNarrow(Comparison comparison) {
        return comparison.intent() == Intent.CHANGED && comparison.verdict() == Decision.PASS;
    }

    private String judged(Comparison comparison) {
        return wording.list(comparison.judged().stream().map(wording::quantity).toList());
    }

    /** The sentence. */
    public String sentence(Comparison comparison) {
        if (comparison.items().isEmpty()) {
            return wording.say("verdict.nothing", "reason", wording.reason(comparison.reason()));
        }
        return switch (comparison.verdict()) {
            case PASS -> comparison.intent() == Intent.CHANGED ? changedPass(comparison) : unchangedPass(comparison);
            case FAIL -> about(comparison, "fail");
            case UNDECIDED -> about(comparison, "undecided");
            case DESCRIBED -> described(comparison);
        };
    }

    private String unchangedPass(Comparison comparison) {
        int passed = Items.decided(comparison, Decision.PASS).size();
        List<Item> levels = Items.judged(comparison, ItemQuantity.LEVEL);
        if (levels.isEmpty()) {
            return wording.say("verdict.unchanged.pass.plain", "items", wording.items(passed));
        }
        int further = passed - levels.size();
        return wording.say(
                further > 0 ? "verdict.unchanged.pass" : "verdict.unchanged.pass.single",
                "settings",
                texts.settings(Settings.of(levels, levels, comparison)),
                "level",
                texts.reaching(Items.farthest(levels)),
                "limit",
                texts.limit(levels.get(0)),
                "items",
                wording.counted("items.further", further));
    }

    private String changedPass(Comparison comparison) {
        return wording.say(
                differing("verdict.changed.pass", comparison), "what", what(comparison), "judged", judged(comparison));
    }

    private String described(Comparison comparison) {
        if (comparison.intent() == Intent.UNCHANGED) {
            return wording.say("verdict.unchanged.none", "reason", wording.reason(comparison.reason()));
        }
        String key = "verdict." + comparison.intent().code() + ".described";
        return wording.say(
                comparison.intent() == Intent.CHANGED ? differing(key, comparison) : key, "what", what(comparison));
    }

    private String differing(String key, Comparison comparison) {
        return DiffersRule.any(comparison) ? key : key + ".none";
    }

    private String about(Comparison comparison, String decision) {
        Decision wanted = comparison.verdict();
        String key = "verdict." + comparison.intent().code() + "." + decision;
        Optional<Item> worst = Items.worst(Items.decided(comparison, wanted));
        if (worst.isEmpty()) {
            return wording.say("verdict.unchanged.none", "reason", wording.reason(comparison.reason()));
        }
        Item item = worst.get();
        String quantity = wording.quantity(item.quantity());
        String condition = wording.named(item);
        if (item.change().value().isEmpty()) {
            return wording.say(
                    key + ".refused",
                    "condition",
                    condition,
                    "quantity",
                    quantity,
                    "reason",
                    wording.reason(item.change().reason()));
        }
        boolean expected = item.subject()
                .filter(s -> s.against() == ItemSubject.Against.EXPECTATION)
                .isPresent();
        return wording.say(
                expected ? key + ".expected" : key,
                "condition",
                condition,
                "quantity",
                wording.subject(item)
                        .filter(s -> item.quantity() == ItemQuantity.RAIL)
                        .orElse(quantity),
                "change",
                texts.said(item),
                "limit",
                texts.limit(item));
    }

    /** What else did not pass, and what would decide it. */
    public List<String> more(Comparison comparison) {
        List<String> more = new ArrayList<>();
        int judged = (int) comparison.items().stream().filter(Item::judged).count();
        for (Decision decision : List.of(Decision.FAIL, Decision.UNDECIDED)) {
            List<Item> items = Items.decided(comparison, decision);
            if (items.size() > 1 || (items.size() == 1 && decision != comparison.verdict())) {
                more.add(wording.say(
                        "verdict.more." + decision.code(),
                        "items",
                        wording.items(items.size(), judged),
                        "list",
                        texts.listed(items)));
            }
        }
        if (comparison.verdict() == Decision.UNDECIDED) {
            Items.neediest(comparison)
                    .flatMap(Item::remedy)
                    .map(wording.speech()::text)
                    .ifPresent(more::add);
        }
        SpokenCondition.of(comparison)
                .flatMap(condition -> drive.of(comparison, condition))
                .map(drives::of)
                .ifPresent(more::add);
        return more;
    }

    private String what(Comparison comparison) {
        return new DiffersText(wording).what(DiffersRule.of(comparison));
    }
}
