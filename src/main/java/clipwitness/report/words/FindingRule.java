package clipwitness.report.words;

import clipwitness.compare.result.Comparison;
import java.util.List;

/** Makes plain findings of one comparison; none where its figures do not carry one. */
interface FindingRule {
    /** Findings, the weightiest first. */
    List<String> of(Comparison comparison);
}
