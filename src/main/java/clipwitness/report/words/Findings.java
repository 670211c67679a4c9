package clipwitness.report.words;

import clipwitness.capture.Doubt;
import clipwitness.capture.Severity;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.JobResults;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Three to five plain findings for the first page: what could not be measured first, then what changed, then what did not. What failed or stays open stands beside the verdicts. */
public final class Findings {
    private static final int MOST = 5;

    private final JobWording wording;
    private final JobResults results;
    private final LevelOnlyFinding levelOnly;
    private final List<FindingRule> rules;

    /** The findings of a job. */
    public Findings(JobWording wording, JobResults results) {
        this.wording = wording;
        this.results = results;
        StateValues figures = new StateValues(results);
        this.levelOnly = new LevelOnlyFinding(wording);
        this.rules = List.of(
                new OnsetFinding(wording, results),
                new MatchedFinding(wording, figures),
                new AsymmetryFinding(wording, figures),
                new UnchangedFinding(wording));
    }

    /** The findings, at most five. */
    public List<String> all() {
        List<String> findings = new ArrayList<>();
        Map<Comparison, List<String>> onlyLevel = new LinkedHashMap<>();
        results.comparisons().stream()
                .filter(c -> c.intent() != Intent.DESCRIBED)
                .forEach(c -> onlyLevel.put(c, levelOnly.of(c)));
        onlyLevel.values().forEach(findings::addAll);
        for (FindingRule rule : rules) {
            onlyLevel.forEach((comparison, said) -> {
                if (said.isEmpty()) {
                    findings.addAll(rule.of(comparison));
                }
            });
        }
        List<String> refused = refused().toList();
        int rest = Math.max(0, MOST - refused.size());
        return Stream.concat(refused.stream(), findings.stream().limit(rest))
                .limit(MOST)
                .toList();
    }

    private Stream<String> refused() {
        return results.captures().stream()
                .flatMap(c -> c.doubts().stream()
                        .filter(d -> d.severity() == Severity.REFUSAL)
                        .limit(1)
                        .map(d -> refused(c, d)));
    }

    private String refused(CaptureResult capture, Doubt doubt) {
        return wording.say("finding.refused", "file", capture.row().file(), "reason", doubt.text());
    }
}
