package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Answer;
import clipwitness.compare.finding.Deciding;
import clipwitness.compare.finding.Paragraph;
import clipwitness.compare.result.JobResults;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The setting of which the first page speaks, under which its picture and its key figures stand: that of the change which decides a state that was to stay,
 * else of the first answer about a sound, else the main one ({@link MainCondition}). It is a setting with waves of two states or more.
 */
final class PageCondition {
    private PageCondition() {}

    /** The condition; empty where no waveform was captured. */
    static Optional<Condition> of(JobResults results, List<Paragraph> paragraphs, List<Deciding> deciding) {
        return spoken(paragraphs, deciding)
                .filter(c ->
                        setting(results, c).filter(s -> s.waves().size() > 1).isPresent())
                .findFirst()
                .or(() -> MainCondition.of(results));
    }

    private static Stream<Condition> spoken(List<Paragraph> paragraphs, List<Deciding> deciding) {
        Stream<Condition> answered = paragraphs.stream()
                .flatMap(p -> p.findings().stream())
                .filter(Answer.class::isInstance)
                .map(a -> a.subject().condition());
        Stream<Condition> decided =
                deciding.stream().filter(Deciding::fails).map(d -> d.subject().condition());
        return Stream.concat(decided, answered);
    }

    /** The waves under a condition. */
    private static Optional<WaveSetting> setting(JobResults results, Condition condition) {
        return WaveGroups.of(results).stream()
                .flatMap(g -> g.settings().stream().filter(s -> g.conditionOf(s).equals(condition)))
                .findFirst();
    }
}
