package clipwitness.compare.response;

import clipwitness.capture.Condition;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.StateResponse;
import clipwitness.measure.response.ResponseResult;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** The responses of a job by state and condition, in the table's order. */
public final class ResponseCatalogue {
    private final List<ResponseAtCondition> all;

    private ResponseCatalogue(List<ResponseAtCondition> all) {
        this.all = List.copyOf(all);
    }

    private record Place(String state, Condition condition, boolean swept) {}

    /**
     * Groups captures; bytes that are listed twice were captured once.
     *
     * @param captures captures
     * @param labels   label of each state
     */
    public static ResponseCatalogue of(List<CaptureResult> captures, UnaryOperator<String> labels) {
        Map<Place, List<CaptureResult>> groups = new LinkedHashMap<>();
        for (CaptureResult c : captures) {
            if (c.response().isPresent()) {
                List<CaptureResult> group = groups.computeIfAbsent(place(c), p -> new ArrayList<>());
                if (group.stream().noneMatch(c::isOfSameExport)) {
                    group.add(c);
                }
            }
        }
        return new ResponseCatalogue(groups.entrySet().stream()
                .map(e -> new ResponseAtCondition(
                        e.getKey().state(),
                        labels.apply(e.getKey().state()),
                        e.getKey().condition(),
                        e.getKey().swept(),
                        e.getValue()))
                .toList());
    }

    private static Place place(CaptureResult capture) {
        Condition c = capture.row().condition();
        boolean swept = capture.response().map(ResponseResult::swept).orElse(false);
        Condition open = new Condition(c.gainPercent(), OptionalDouble.empty(), c.level(), c.setting());
        return new Place(
                capture.row().state().orElseThrow(),
                open,
                swept && c.frequency().isEmpty());
    }

    /** The responses of a state. */
    List<ResponseAtCondition> of(String state) {
        return all.stream().filter(r -> r.state().equals(state)).toList();
    }

    /** The responses of two states that were captured alike and from different exports. */
    List<ResponsePair> pairs(String from, String to) {
        return of(from).stream()
                .flatMap(a -> like(to, a).filter(b -> !a.sharesExport(b)).map(b -> new ResponsePair(a, b)).stream())
                .toList();
    }

    private Optional<ResponseAtCondition> like(String state, ResponseAtCondition other) {
        return of(state).stream()
                .filter(r -> r.condition().equals(other.condition()) && r.swept() == other.swept())
                .findFirst();
    }

    /** All responses as results. */
    public List<StateResponse> results() {
        return all.stream().map(ResponseAtCondition::result).toList();
    }
}
