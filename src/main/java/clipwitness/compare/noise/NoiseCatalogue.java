package clipwitness.compare.noise;

import clipwitness.capture.Condition;
import clipwitness.compare.result.CaptureResult;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The captures of noise of a job by state and condition, in the table's order. */
public final class NoiseCatalogue {
    private final List<NoiseAtCondition> settings;

    private NoiseCatalogue(List<NoiseAtCondition> settings) {
        this.settings = List.copyOf(settings);
    }

    /** State and condition. */
    private record Place(String state, Condition condition) {}

    /**
     * Groups captures; bytes that are listed twice were captured once.
     *
     * @param captures captures with the lines of one mains each
     * @param labels   label of each state
     */
    public static NoiseCatalogue of(List<CaptureResult> captures, UnaryOperator<String> labels) {
        Map<Place, List<CaptureResult>> groups = new LinkedHashMap<>();
        for (CaptureResult c : captures) {
            if (c.noise().isPresent()) {
                Place place = new Place(c.row().state().orElseThrow(), c.row().condition());
                List<CaptureResult> replicates = groups.computeIfAbsent(place, p -> new ArrayList<>());
                if (replicates.stream().noneMatch(c::isOfSameExport)) {
                    replicates.add(c);
                }
            }
        }
        return new NoiseCatalogue(groups.entrySet().stream()
                .map(e -> new NoiseAtCondition(
                        e.getKey().state(),
                        labels.apply(e.getKey().state()),
                        e.getKey().condition(),
                        e.getValue()))
                .toList());
    }

    /** Every setting of every state. */
    public List<NoiseAtCondition> all() {
        return settings;
    }

    /** The settings of a state. */
    public List<NoiseAtCondition> of(String state) {
        return settings.stream().filter(s -> s.state().equals(state)).toList();
    }

    /** The setting of a state under a condition. */
    public Optional<NoiseAtCondition> at(String state, Condition condition) {
        return of(state).stream().filter(s -> s.condition().equals(condition)).findFirst();
    }

    /** The settings of two states that were captured under one condition and from different exports, as the first has them. */
    public List<NoisePair> pairs(String from, String to) {
        return of(from).stream()
                .flatMap(a ->
                        at(to, a.condition()).filter(b -> !a.sharesExport(b)).map(b -> new NoisePair(a, b)).stream())
                .toList();
    }
}
