package clipwitness.report.build;

import clipwitness.compare.result.Comparison;
import clipwitness.report.model.Verdict;
import clipwitness.report.words.JobWording;
import clipwitness.report.words.VerdictText;

/** Verdicts for the first page. */
final class VerdictBuilder {
    private final JobWording wording;
    private final VerdictText texts;

    VerdictBuilder(JobWording wording) {
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
