package clipwitness.compare.response;

import clipwitness.capture.Condition;
import clipwitness.compare.judge.Replicates;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.StateResponse;
import clipwitness.measure.response.ResponseCurve;
import clipwitness.measure.response.ResponsePoint;
import clipwitness.measure.response.ResponseResult;
import clipwitness.reason.Argument;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The response of one state at one position of the controls: its steady sines, or its sweeps.
 *
 * @param state     state
 * @param label     the state's label, for sentences
 * @param condition condition, the frequency left open
 * @param swept     whether it is from sweeps
 * @param captures  captures, at least one
 */
record ResponseAtCondition(
        String state, String label, Condition condition, boolean swept, List<CaptureResult> captures) {
    ResponseAtCondition {
        captures = List.copyOf(captures);
        if (captures.isEmpty()) {
            throw new IllegalArgumentException("a response needs a capture");
        }
    }

    private List<ResponseResult> results() {
        return captures.stream().flatMap(c -> c.response().stream()).toList();
    }

    /** The points, replicates averaged. */
    ResponseCurve curve() {
        Map<Double, List<ResponsePoint>> byFrequency = new TreeMap<>();
        for (ResponseResult result : results()) {
            result.points()
                    .forEach(p -> byFrequency
                            .computeIfAbsent(p.frequency(), f -> new ArrayList<>())
                            .add(p));
        }
        return new ResponseCurve(
                byFrequency.values().stream().map(ResponseAtCondition::mean).toList());
    }

    private static ResponsePoint mean(List<ResponsePoint> points) {
        return new ResponsePoint(
                points.get(0).frequency(),
                Replicates.mean(points.stream().map(ResponsePoint::gain).toList()),
                Replicates.mean(points.stream().map(ResponsePoint::phase).toList()),
                points.get(0).coherence());
    }

    StateResponse result() {
        return new StateResponse(state, condition, swept, curve());
    }

    /** Label as an argument of a statement. */
    Argument name() {
        return Argument.name(label);
    }

    /** Number of occasions on which the controls were set. */
    int runs() {
        return (int) captures.stream().mapToInt(c -> c.row().run()).distinct().count();
    }

    /** Whether ranges or instruments of two states are known to differ. */
    boolean differsInRange(ResponseAtCondition other) {
        ResponseResult own = results().get(0);
        ResponseResult others = other.results().get(0);
        return own.range().differsFrom(others.range())
                || !captures.get(0)
                        .row()
                        .instrument()
                        .equals(other.captures.get(0).row().instrument());
    }

    /** Whether both have an export in common. */
    boolean sharesExport(ResponseAtCondition other) {
        return captures.stream().anyMatch(c -> other.captures.stream().anyMatch(c::isOfSameExport));
    }
}
