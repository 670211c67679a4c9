package clipwitness.report.words;

import clipwitness.compare.finding.Deciding;
import clipwitness.compare.finding.Deciding.Kind;
import clipwitness.compare.finding.Difference;
import clipwitness.compare.finding.Items;
import clipwitness.compare.result.Item;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import java.util.Optional;

/** The change that decides a verdict, in one sentence: what changed, which way and by how much. */
final class DecidingText {
    private final JobWording wording;
    private final ItemText texts;
    private final NullText nulls;

    DecidingText(JobWording wording) {
        this.wording = wording;
        this.texts = new ItemText(wording);
        this.nulls = new NullText(wording);
    }

    String of(Deciding finding) {
        Item item = finding.item();
        boolean shape = finding.kind() == Kind.SHAPE;
        return wording.say(
                key(finding),
                "condition",
                wording.named(item),
                "quantity",
                wording.subject(item)
                        .filter(s -> item.quantity() == ItemQuantity.RAIL)
                        .orElseGet(() -> wording.quantity(item.quantity())),
                "change",
                shape ? nulls.spread(item) : change(finding),
                "uncertainty",
                finding.kind() == Kind.UNKNOWN ? texts.hiding(item) : "",
                "limit",
                shape ? nulls.limit(item) : texts.limit(item),
                "now",
                finding.figures().map(Difference::now).map(this::percent).orElse(""),
                "before",
                finding.figures().map(Difference::before).map(this::percent).orElse(""),
                "louder",
                louder(finding),
                "reason",
                wording.reason(item.change().reason()));
    }

    private static String key(Deciding finding) {
        String quantity = finding.item().quantity().key();
        return switch (finding.kind()) {
            case REFUSED -> "decided.refused";
            case UNKNOWN -> "decided.unknown";
            case SHAPE -> "decided.shape";
            case TURNED -> "decided.turned";
            case HARDLY_CLIPS -> "decided.hardly-clips";
            case MORE, LESS ->
                "decided." + quantity + (finding.isFromExpectation() ? ".expected." : ".")
                        + finding.kind().code();
        };
    }

    private String change(Deciding finding) {
        return switch (finding.kind()) {
            case REFUSED -> "";
            case UNKNOWN, TURNED -> texts.said(finding.item());
            default -> texts.spread(finding.item());
        };
    }

    private String percent(Measured.Value value) {
        String number = texts.round(value.shown(), value.expanded(), Unit.PERCENT);
        return value.isUpperBound() ? wording.say("amount.below", "amount", number) : number;
    }

    /** By how much it became louder; empty where it did not. */
    private String louder(Deciding finding) {
        Optional<Item> level = finding.level().filter(i -> !Items.isFall(i));
        return level.map(texts::sizeOf).orElse("");
    }
}
