package clipwitness.report.words;

import clipwitness.compare.finding.Treble;
import clipwitness.quantity.Unit;
import java.util.List;

/** What became of the treble, in words. */
final class TrebleText {
    private final JobWording wording;
    private final ItemText texts;

    TrebleText(JobWording wording) {
        this.wording = wording;
        this.texts = new ItemText(wording);
    }

    String of(Treble finding) {
        List<String> parts =
                finding.parts().stream().map(p -> part(p, finding.moved())).toList();
        return wording.say(
                "finding.treble." + finding.word(),
                "to",
                wording.called(finding.subject().later()),
                "from",
                wording.called(finding.subject().earlier()),
                "parts",
                wording.list(parts));
    }

    private String part(Treble.Part part, boolean moved) {
        double change = part.change().number();
        double uncertainty = part.change().expanded();
        String key = moved ? change < 0 ? "finding.treble.less" : "finding.treble.more" : "finding.treble.within";
        String size = moved
                ? texts.spread(Math.abs(change), uncertainty, Unit.DECIBEL.symbol())
                : wording.numbers().atMost(Math.abs(change) + uncertainty, Unit.DECIBEL, 2);
        return wording.say(
                key, "change", size, "frequency", wording.numbers().nominal(1000.0 * part.kilohertz(), Unit.HERTZ));
    }
}
