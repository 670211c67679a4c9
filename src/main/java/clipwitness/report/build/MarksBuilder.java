package clipwitness.report.build;

import clipwitness.compare.finding.Mark;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.rule.Marks;
import clipwitness.report.model.ShownMark;
import clipwitness.report.words.ItemText;
import clipwitness.report.words.JobWording;
import java.util.List;
import java.util.Locale;

/** The four marks of the first page: sound, noise, treble and supply rails. */
final class MarksBuilder {
    private static final String MISSING = "missing";
    private static final String NOTHING = "○";

    private final JobWording wording;
    private final ItemText texts;

    MarksBuilder(JobWording wording) {
        this.wording = wording;
        this.texts = new ItemText(wording);
    }

    /** The marks; none where nothing was compared. */
    List<ShownMark> of(JobResults results) {
        return Marks.marked(results)
                .map(c -> Marks.of(c).stream().map(this::shown).toList())
                .orElse(List.of());
    }

    /** Which comparison is marked; empty where the only state that was to stay, or the only one that is judged, is meant. */
    String about(JobResults results) {
        long judged = results.comparisons().stream()
                .filter(c -> c.intent() != Intent.DESCRIBED)
                .count();
        long unchanged = results.comparisons().stream()
                .filter(c -> c.intent() == Intent.UNCHANGED)
                .count();
        return judged < 2 || unchanged == 1
                ? ""
                : Marks.marked(results)
                        .map(c -> wording.say(
                                "comparison.title", "to", wording.called(c.to()), "from", wording.called(c.from())))
                        .orElse("");
    }

    private ShownMark shown(Mark mark) {
        return new ShownMark(
                mark.decision().map(Decision::code).orElse(MISSING),
                mark.decision().map(Signs::of).orElse(NOTHING),
                wording.say("mark." + mark.part().name().toLowerCase(Locale.ROOT)),
                mark.decision().map(wording::decision).orElseGet(() -> wording.say("mark.missing")),
                mark.telling().map(this::figure).orElse(""));
    }

    private String figure(Item item) {
        String change = texts.change(item).full();
        if (change.isEmpty()) {
            return "";
        }
        return wording.say("mark.figure", "quantity", wording.told(item), "change", change);
    }
}
