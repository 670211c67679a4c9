package clipwitness.compare.judge;

import clipwitness.capture.Condition;
import clipwitness.compare.result.CaptureResult;
import clipwitness.job.CaptureKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The waveform captures of a job by state and condition, in the table's order. */
public final class Catalogue {
    private final Map<String, Map<Condition, StateAtCondition>> byState;
    private final Map<String, Map<Condition, List<StateAtCondition>>> alongGain = new HashMap<>();

    private Catalogue(Map<String, Map<Condition, StateAtCondition>> byState) {
        this.byState = byState;
        byState.forEach((state, settings) -> {
            Map<Condition, List<StateAtCondition>> known = new HashMap<>();
            settings.values()
                    .forEach(s -> known.computeIfAbsent(s.condition().withoutGain(), c -> alongGain(state, c)));
            alongGain.put(state, known);
        });
    }

    /**
     * Groups captures.
     *
     * @param labels label of each state
     */
    public static Catalogue of(List<CaptureResult> captures, UnaryOperator<String> labels) {
        Map<String, Map<Condition, List<CaptureResult>>> groups = new LinkedHashMap<>();
        for (CaptureResult c : captures) {
            if (c.row().kind() == CaptureKind.WAVEFORM) {
                List<CaptureResult> replicates = groups.computeIfAbsent(
                                c.row().state().orElseThrow(), s -> new LinkedHashMap<>())
                        .computeIfAbsent(c.row().condition(), k -> new ArrayList<>());
                if (replicates.stream()
                        .noneMatch(c::isOfSameExport)) { // bytes that are listed twice were captured once
                    replicates.add(c);
                }
            }
        }
        Map<String, Map<Condition, StateAtCondition>> byState = new LinkedHashMap<>();
        groups.forEach((state, conditions) -> {
            Map<Condition, StateAtCondition> settings = new LinkedHashMap<>();
            conditions.forEach((condition, replicates) ->
                    settings.put(condition, new StateAtCondition(state, labels.apply(state), condition, replicates)));
            byState.put(state, settings);
        });
        return new Catalogue(byState);
    }

    /** All settings of a state; none where the state has no waveform capture. */
    public List<StateAtCondition> of(String state) {
        return List.copyOf(byState.getOrDefault(state, Map.of()).values());
    }

    /** The setting of a state under a condition. */
    public Optional<StateAtCondition> at(String state, Condition condition) {
        return Optional.ofNullable(byState.getOrDefault(state, Map.of()).get(condition));
    }

    /** Every setting of every state. */
    List<StateAtCondition> all() {
        return byState.values().stream().flatMap(m -> m.values().stream()).toList();
    }

    /** The settings of a state that differ from this one in the gain control only, itself included, rising. */
    public List<StateAtCondition> alongGain(StateAtCondition setting) {
        return alongGain
                .getOrDefault(setting.state(), Map.of())
                .getOrDefault(setting.condition().withoutGain(), List.of());
    }

    private List<StateAtCondition> alongGain(String state, Condition withoutGain) {
        return of(state).stream()
                .filter(s -> s.condition().gainPercent().isPresent()
                        && s.condition().withoutGain().equals(withoutGain))
                .sorted((a, b) -> Double.compare(gain(a), gain(b)))
                .toList();
    }

    /** A setting with its neighbours along the gain control, as far as there are any, rising. */
    public List<StateAtCondition> around(StateAtCondition setting) {
        List<StateAtCondition> along = alongGain(setting);
        int at = along.stream().map(StateAtCondition::condition).toList().indexOf(setting.condition());
        return along.subList(Math.max(0, at - 1), Math.min(along.size(), at + 2));
    }

    /** Position of the gain control of a setting that has one, percent. */
    public static double gain(StateAtCondition setting) {
        return setting.condition().gainPercent().orElseThrow();
    }
}
