package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Deciding;
import clipwitness.compare.finding.Differs;
import clipwitness.compare.finding.Finding;
import clipwitness.compare.finding.Paragraph;
import clipwitness.compare.finding.Pictured;
import clipwitness.compare.finding.RefusedCapture;
import clipwitness.compare.finding.Subject;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.JobResults;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.HintCode;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The findings of a job, by the same rules for whoever asks.
 *
 * @param paragraphs findings as they are read, the weightiest first: what became of the sound, what could not be measured, then what changed, then what did not
 * @param deciding   the change that decides each verdict which is fail or undecided
 * @param differing  what differs in each comparison, as its verdict says it
 * @param pictured   what the pictures of the waves under the main condition, and under that of the first page, show
 * @param page       the setting of which the first page speaks; empty where no waveform was captured
 */
public record Findings(
        List<Paragraph> paragraphs,
        List<Deciding> deciding,
        List<Differs> differing,
        List<Finding> pictured,
        Optional<Condition> page) {
    /** Copies what it is given. */
    public Findings {
        paragraphs = List.copyOf(paragraphs);
        deciding = List.copyOf(deciding);
        differing = List.copyOf(differing);
        pictured = List.copyOf(pictured);
    }

    /** The findings of a job. */
    public static Findings of(JobResults results) {
        Answers answers = Answers.of(results);
        List<Paragraph> paragraphs = new ArrayList<>(answers.paragraphs());
        paragraphs.addAll(refused(results).toList());
        paragraphs.addAll(told(results, answers));
        List<Deciding> deciding = deciding(results);
        Optional<Condition> page = PageCondition.of(results, paragraphs, deciding);
        return new Findings(
                paragraphs,
                deciding,
                results.comparisons().stream()
                        .flatMap(c -> DiffersRule.of(c).stream())
                        .toList(),
                pictured(results, page),
                page);
    }

    /** All findings in one list. */
    public List<Finding> all() {
        List<Finding> all = new ArrayList<>();
        paragraphs.forEach(p -> all.addAll(p.findings()));
        all.addAll(deciding);
        all.addAll(differing);
        all.addAll(pictured);
        return all;
    }

    /** A new rule takes its place in this list; where all is said of a sound, no other rule is asked. */
    private static List<FindingRule> rules(JobResults results) {
        return List.of(
                new OnsetRule(results),
                new HeadroomRule(results),
                new TrebleRule(results),
                new MatchedRule(results),
                new AsymmetricRule(results),
                new UnchangedRule(results));
    }

    private static List<Paragraph> told(JobResults results, Answers answers) {
        LevelOnlyRule levelOnly = new LevelOnlyRule();
        Map<Comparison, List<Paragraph>> onlyLevel = new LinkedHashMap<>();
        results.comparisons().stream()
                .filter(c -> c.intent() != Intent.DESCRIBED && !answers.sayAllOf(c) && !isSilent(results, c))
                .forEach(c -> onlyLevel.put(c, levelOnly.of(c)));
        List<Paragraph> paragraphs = new ArrayList<>();
        onlyLevel.values().forEach(paragraphs::addAll);
        for (FindingRule rule : rules(results)) {
            onlyLevel.forEach((comparison, said) -> {
                if (said.isEmpty()) {
                    paragraphs.addAll(rule.of(comparison));
                }
            });
        }
        return paragraphs;
    }

    /** Whether a hint says that the later state gives no output: then nothing is left to be said of its sound. */
    private static boolean isSilent(JobResults results, Comparison comparison) {
        return results.hints().stream()
                .anyMatch(h -> h.code() == HintCode.NO_OUTPUT && h.states().contains(comparison.to()));
    }

    private static List<Deciding> deciding(JobResults results) {
        DecidingRule rule = new DecidingRule(results);
        return results.comparisons().stream().flatMap(c -> rule.of(c).stream()).toList();
    }

    private static Stream<Paragraph> refused(JobResults results) {
        Map<DoubtReason, List<RefusedCapture>> causes = results.captures().stream()
                .flatMap(c -> c.doubts().stream()
                        .filter(d -> d.severity() == Severity.REFUSAL)
                        .limit(1)
                        .map(d -> new RefusedCapture(subject(c), c.row().file(), d, 0)))
                .collect(Collectors.groupingBy(r -> r.doubt().raisedBy(), LinkedHashMap::new, Collectors.toList()));
        return causes.values().stream()
                .map(alike -> alike.get(0).with(alike.size() - 1))
                .map(f -> new Paragraph(List.of(f)));
    }

    private static Subject subject(CaptureResult capture) {
        return new Subject(
                Optional.empty(), capture.row().state(), capture.row().condition());
    }

    private static List<Finding> pictured(JobResults results, Optional<Condition> page) {
        List<Finding> pictured = new ArrayList<>();
        List<WaveGroup> groups = WaveGroups.of(results);
        groups.stream().limit(1).forEach(main -> {
            List<Condition> conditions =
                    main.settings().stream().map(main::conditionOf).toList();
            pictured.addAll(PicturedRule.changes(results, main.conditionOf(main.chosen())));
            pictured.addAll(PicturedRule.remainders(results, conditions));
        });
        page.filter(p -> pictured.stream()
                        .noneMatch(f ->
                                f instanceof Pictured && f.subject().condition().equals(p)))
                .ifPresent(p -> pictured.addAll(PicturedRule.changes(results, p)));
        page.ifPresent(p -> PicturedRule.remainders(results, List.of(p)).stream()
                .filter(f -> !pictured.contains(f))
                .forEach(pictured::add));
        return pictured;
    }
}
