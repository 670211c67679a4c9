package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.JobResults;
import clipwitness.job.CaptureKind;
import clipwitness.job.State;
import clipwitness.measure.WaveformResult;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Sorts a job's waveform captures by condition. */
public final class WaveGroups {
    private WaveGroups() {}

    /**
     * The job's waves, condition by condition: first the one with the most waves, then the others in the table's order. A
     * condition that differs from the first in its level only and has but one setting is a level step, no group of its own.
     */
    public static List<WaveGroup> of(JobResults results) {
        Map<Condition, List<CaptureResult>> byCondition = new LinkedHashMap<>();
        for (CaptureResult capture : results.captures()) {
            if (capture.row().kind() == CaptureKind.WAVEFORM
                    && capture.waveform().isPresent()) {
                byCondition
                        .computeIfAbsent(capture.row().condition().withoutGain(), c -> new ArrayList<>())
                        .add(capture);
            }
        }
        List<State> states = results.job().sheet().states();
        List<WaveGroup> groups = byCondition.entrySet().stream()
                .map(e -> new WaveGroup(e.getKey(), settings(e.getValue(), states)))
                .filter(g -> g.waves() > 0)
                .toList();
        return mainFirst(groups);
    }

    private static List<WaveGroup> mainFirst(List<WaveGroup> groups) {
        return groups.stream()
                .max(Comparator.comparingInt(WaveGroup::waves)
                        .thenComparing(groups::indexOf, Comparator.reverseOrder()))
                .map(main -> Stream.concat(
                                Stream.of(main), groups.stream().filter(g -> !g.equals(main) && !isLevelStep(g, main)))
                        .toList())
                .orElse(List.of());
    }

    private static boolean isLevelStep(WaveGroup group, WaveGroup main) {
        return group.settings().size() == 1
                && group.condition().withoutLevel().equals(main.condition().withoutLevel());
    }

    private static List<WaveSetting> settings(List<CaptureResult> captures, List<State> states) {
        List<OptionalDouble> gains = captures.stream()
                .map(c -> c.row().condition().gainPercent())
                .distinct()
                .sorted(Comparator.comparingDouble(gain -> gain.orElse(-1)))
                .toList();
        return gains.stream()
                .map(gain -> new WaveSetting(gain, waves(captures, gain, states)))
                .filter(s -> !s.waves().isEmpty())
                .toList();
    }

    private static Map<String, WaveformResult> waves(
            List<CaptureResult> captures, OptionalDouble gain, List<State> states) {
        Map<String, WaveformResult> waves = new LinkedHashMap<>();
        for (State state : states) {
            captures.stream()
                    .filter(c -> c.row().condition().gainPercent().equals(gain))
                    .filter(c -> c.row().state().equals(Optional.of(state.name())))
                    .flatMap(c -> c.waveform().stream())
                    .filter(w -> w.cycle().isPresent() && !w.refused())
                    .findFirst()
                    .ifPresent(w -> waves.put(state.name(), w));
        }
        return waves;
    }
}
