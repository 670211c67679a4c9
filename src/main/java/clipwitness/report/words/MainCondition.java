package clipwitness.report.words;

import clipwitness.capture.Condition;
import clipwitness.compare.CaptureResult;
import clipwitness.compare.JobResults;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The one condition that the first page shows: the one that most states have; among these, the highest gain. */
public final class MainCondition {
    private MainCondition() {}

    /** The condition; empty where no waveform was measured. */
    public static Optional<Condition> of(JobResults results) {
        Map<Condition, Set<String>> states = new LinkedHashMap<>();
        for (CaptureResult capture : results.captures()) {
            if (capture.waveform().isPresent()) {
                capture.row()
                        .state()
                        .ifPresent(s -> states.computeIfAbsent(capture.row().condition(), k -> new LinkedHashSet<>())
                                .add(s));
            }
        }
        return states.entrySet().stream()
                .max(Comparator.<Map.Entry<Condition, Set<String>>>comparingInt(
                                e -> e.getValue().size())
                        .thenComparingDouble(e -> e.getKey().gainPercent().orElse(-1)))
                .map(Map.Entry::getKey);
    }
}
