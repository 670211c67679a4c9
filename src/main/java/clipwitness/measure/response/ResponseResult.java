package clipwitness.measure.response;

import clipwitness.capture.VerticalRange;
import clipwitness.reason.Doubt;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What one capture shows of the frequency response.
 *
 * @param points    one point for a steady sine, many for a sweep or noise; none where the capture was refused
 * @param swept     whether it is a sweep or noise
 * @param inputPeak largest distance of the input from its mean, V; empty without an input channel
 * @param range     range of the instrument at which the output was captured
 * @param doubts    what the measuring found doubtful
 */
public record ResponseResult(
        List<ResponsePoint> points, boolean swept, OptionalDouble inputPeak, VerticalRange range, List<Doubt> doubts) {
    /** Copies what it is given. */
    public ResponseResult {
        points = List.copyOf(points);
        Objects.requireNonNull(inputPeak, "inputPeak");
        Objects.requireNonNull(range, "range");
        doubts = List.copyOf(doubts);
    }

    /** Whether a doubt refused the figures. */
    public boolean refused() {
        return doubts.stream().anyMatch(Doubt::refuses);
    }
}
