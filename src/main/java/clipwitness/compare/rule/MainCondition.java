package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.JobResults;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The main condition: that of the main picture, of its text and of the table of key figures. Of the conditions with the most
 * waves it is the setting that {@link WaveGroup#chosen()} names.
 */
public final class MainCondition {
    private MainCondition() {}

    /** The condition; empty where no waveform was captured. */
    public static Optional<Condition> of(JobResults results) {
        return WaveGroups.of(results).stream()
                .findFirst()
                .map(main -> main.conditionOf(main.chosen()))
                .or(() -> withoutWaves(results));
    }

    /** Where every waveform capture was refused: the first condition that most of them share. */
    private static Optional<Condition> withoutWaves(JobResults results) {
        Map<Condition, List<CaptureResult>> captures = new LinkedHashMap<>();
        results.captures().stream()
                .filter(c -> c.waveform().isPresent())
                .forEach(c -> captures.computeIfAbsent(c.row().condition(), k -> new ArrayList<>())
                        .add(c));
        return captures.entrySet().stream()
                .max(Comparator.comparingInt(e -> e.getValue().size()))
                .map(Map.Entry::getKey);
    }
}
