package clipwitness.report.words;

import clipwitness.compare.finding.Difference;
import clipwitness.compare.finding.Moved;
import clipwitness.compare.finding.SameShape;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import java.util.Map;
import java.util.function.Function;

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
        return wording.say(
                SHAPE.get(finding.kind()),
                "to",
                wording.called(finding.subject().later()),
                "from",
                wording.called(finding.subject().earlier()),
                "share",
                beyond ? nulls.spread(finding.nullDepth()) : nulls.most(finding.nullDepth()),
                "condition",
                wording.apart(wording.condition(finding.subject().condition())),
                "settings",
                wording.apart(texts.settings(finding.settings())),
                "limit",
                nulls.limit(finding.nullDepth()));
    }

    String of(Moved finding) {
        String moved = wording.say(
                MOVED.get(finding.farthest().quantity()) + (finding.beyond() ? ".beyond" : ""),
                "to",
                wording.called(finding.subject().later()),
                "change",
                finding.beyond() ? texts.spread(finding.farthest()) : texts.within(finding.farthest()),
                "condition",
                wording.apart(wording.condition(finding.subject().condition())),
                "now",
                percent(finding, Difference::now),
                "before",
                percent(finding, Difference::before),
                "settings",
                finding.beyond() && finding.settings().all() ? "" : wording.apart(texts.settings(finding.settings())),
                "limit",
                texts.limit(finding.farthest()));
        return finding.part() ? wording.say("finding.moved.part", "sentence", moved) : moved;
    }

    private String percent(Moved finding, Function<Difference, Measured.Value> of) {
        return finding.figures()
                .map(of)
                .map(v -> texts.round(v.shown(), v.expanded(), Unit.PERCENT))
                .orElse("");
    }
}
