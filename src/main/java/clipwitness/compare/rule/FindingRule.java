package clipwitness.compare.rule;

import clipwitness.compare.finding.Paragraph;
import clipwitness.compare.result.Comparison;
import java.util.List;

/** Makes findings of one comparison; none where its figures do not carry one. */
interface FindingRule {
    /** Findings, the weightiest first. */
    List<Paragraph> of(Comparison comparison);
}
