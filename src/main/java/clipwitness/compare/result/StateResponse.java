package clipwitness.compare.result;

import clipwitness.capture.Condition;
import clipwitness.measure.response.ResponseCurve;
import java.util.Objects;

/**
 * Frequency response of one state.
 *
 * @param state     state
 * @param condition condition, the frequency left open
 * @param swept     whether it is from a sweep or noise; else from steady sines
 * @param curve     gain and phase over frequency
 */
public record StateResponse(String state, Condition condition, boolean swept, ResponseCurve curve) {
    /** Checks that all parts are there. */
    public StateResponse {
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(condition, "condition");
        Objects.requireNonNull(curve, "curve");
    }
}
