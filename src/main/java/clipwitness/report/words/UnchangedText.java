package clipwitness.report.words;

import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.Moved;
import clipwitness.compare.finding.SameShape;
import clipwitness.quantity.ItemQuantity;
import java.util.Map;

/** What an unchanged state kept, in words. */
final class UnchangedText {
    private static final Map<ItemQuantity, String> MOVED = Map.of(
            ItemQuantity.THD, "finding.moved.thd",
            ItemQuantity.ASYMMETRY, "finding.moved.asymmetry");

    private static final Map<SameShape.Kind, String> SHAPE = Map.of(
            SameShape.Kind.WITHIN, "finding.null",
            SameShape.Kind.BOUND, "finding.null.bound",
            SameShape.Kind.BEYOND, "finding.null.beyond");

    private final JobWording wording;
    private final ItemText texts;
    private final NullText nulls;

    UnchangedText(JobWording wording) {
        this.wording = wording;
        this.texts = new ItemText(wording);
        this.nulls = new NullText(wording);
    }

    String of(SameShape finding) {
        boolean beyond = finding.kind() == SameShape.Kind.BEYOND;
        boolean bound = Items.isBound(finding.nullDepth());
        return wording.say(
                SHAPE.get(finding.kind()),
                "to",
                wording.label(finding.subject().later()),
                "from",
                wording.label(finding.subject().earlier()),
                "share",
                beyond ? nulls.share(finding.nullDepth()) : nulls.most(finding.nullDepth()),
                "depth",
                bound ? nulls.bound(finding.nullDepth()) : texts.said(finding.nullDepth()),
                "condition",
                wording.apart(wording.condition(finding.subject().condition())),
                "settings",
                wording.apart(texts.settings(finding.settings())),
                "limit",
                texts.limit(finding.nullDepth()));
    }

    String of(Moved finding) {
        String moved = wording.say(
                MOVED.get(finding.farthest().quantity()) + (finding.beyond() ? ".beyond" : ""),
                "to",
                wording.label(finding.subject().later()),
                "change",
                texts.reaching(finding.farthest()),
                "settings",
                wording.apart(texts.settings(finding.settings())),
                "limit",
                texts.limit(finding.farthest()));
        return finding.part() ? wording.say("finding.moved.part", "sentence", moved) : moved;
    }
}
