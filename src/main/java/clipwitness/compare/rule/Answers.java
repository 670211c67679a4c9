package clipwitness.compare.rule;

import clipwitness.compare.finding.Answer;
import clipwitness.compare.finding.Finding;
import clipwitness.compare.finding.OtherDrive;
import clipwitness.compare.finding.Paragraph;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.JobResults;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What became of the sound in all comparisons of a job that ask for it, those of one state together. */
final class Answers {
    private final Map<Comparison, List<Finding>> told = new LinkedHashMap<>();

    private Answers() {}

    static Answers of(JobResults results) {
        Answers answers = new Answers();
        AnswerRule rule = new AnswerRule(results);
        results.comparisons().forEach(c -> answers.add(c, rule.of(c)));
        return answers;
    }

    private void add(Comparison comparison, List<Paragraph> found) {
        List<Finding> findings = new ArrayList<>();
        found.forEach(p -> findings.addAll(p.findings()));
        Optional<Answer> earlier = earlier(comparison.to());
        findings.replaceAll(f -> f instanceof Answer a && earlier.isPresent() ? a.behind(earlier.get()) : f);
        if (!findings.isEmpty()) {
            told.put(comparison, findings);
        }
    }

    /** The first answer about a state. */
    private Optional<Answer> earlier(String state) {
        return told.entrySet().stream()
                .filter(e -> e.getKey().to().equals(state))
                .flatMap(e -> answer(e.getKey()).stream())
                .findFirst();
    }

    private Optional<Answer> answer(Comparison comparison) {
        return told.getOrDefault(comparison, List.of()).stream()
                .filter(Answer.class::isInstance)
                .map(Answer.class::cast)
                .findFirst();
    }

    /** A paragraph for each state that was to change: the answer against another state stands behind the first. */
    List<Paragraph> paragraphs() {
        Map<String, List<Finding>> byState = new LinkedHashMap<>();
        told.forEach((comparison, findings) -> {
            List<Finding> paragraph = byState.computeIfAbsent(comparison.to(), s -> new ArrayList<>());
            findings.stream().filter(f -> !isSaid(f, paragraph)).forEach(paragraph::add);
        });
        return byState.values().stream().map(Paragraph::new).toList();
    }

    /** The drive of a state is told once, whichever state it is compared with. */
    private static boolean isSaid(Finding finding, List<Finding> paragraph) {
        return finding instanceof OtherDrive
                && paragraph.stream()
                        .anyMatch(f -> f instanceof OtherDrive
                                && f.word().equals(finding.word())
                                && f.subject()
                                        .condition()
                                        .equals(finding.subject().condition()));
    }

    /** Whether nothing is left to say of a comparison: the sound stayed, or does not clip at all. */
    boolean sayAllOf(Comparison comparison) {
        return answer(comparison)
                .filter(a -> switch (a.kind()) {
                    case ONLY_LEVEL, SAME, CLEAN -> true;
                    case GENTLER, HARSHER, DIFFERENT, OTHER_SHAPE, OPEN -> false;
                })
                .isPresent();
    }
}
