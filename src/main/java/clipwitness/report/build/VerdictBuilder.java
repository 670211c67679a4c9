package clipwitness.report.build;

import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.rule.Findings;
import clipwitness.report.model.Verdict;
import clipwitness.report.words.JobWording;
import clipwitness.report.words.VerdictText;

/** Verdicts for the first page. */
final class VerdictBuilder {
    private final JobWording wording;
    private final VerdictText texts;

    VerdictBuilder(JobWording wording, Findings found) {
        this.wording = wording;
        this.texts = new VerdictText(wording, found);
    }

    Verdict of(Comparison comparison) {
        Decision shown = shown(comparison);
        return new Verdict(
                shown.code(),
                Signs.of(shown),
                texts.lead(comparison),
                comparison.intent().code(),
                texts.isToldBefore(comparison),
                wording.label(comparison.to()),
                wording.say("verdict.against", "from", wording.called(comparison.from())),
                texts.sentence(comparison),
                texts.more(comparison));
    }

    /** Praise is for what stayed alone: where a state was to change, what passes says nothing of its sound. */
    private static Decision shown(Comparison comparison) {
        boolean praise = comparison.verdict() == Decision.PASS && comparison.intent() != Intent.UNCHANGED;
        return praise ? Decision.DESCRIBED : comparison.verdict();
    }
}
