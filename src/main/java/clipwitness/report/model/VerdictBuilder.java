package clipwitness.report.model;

import clipwitness.compare.Comparison;
import clipwitness.report.words.VerdictText;
import clipwitness.report.words.Wording;

/** Verdicts for the first page. */
final class VerdictBuilder {
    private final Wording wording;
    private final VerdictText texts;

    VerdictBuilder(Wording wording) {
        this.wording = wording;
        this.texts = new VerdictText(wording);
    }

    Verdict of(Comparison comparison) {
        return new Verdict(
                comparison.verdict().code(),
                Signs.of(comparison.verdict()),
                texts.head(comparison),
                VerdictText.isNarrow(comparison),
                wording.label(comparison.to()),
                wording.say("verdict.against", "from", wording.label(comparison.from())),
                texts.sentence(comparison),
                texts.more(comparison));
    }
}
