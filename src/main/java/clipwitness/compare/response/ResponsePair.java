package clipwitness.compare.response;

import clipwitness.measure.response.ResponseCurve;
import clipwitness.measure.response.ResponsePoint;
import clipwitness.measure.response.SweptResponse;
import java.util.List;

/**
 * The responses of two states, captured alike.
 *
 * @param from before
 * @param to   after
 */
record ResponsePair(ResponseAtCondition from, ResponseAtCondition to) {
    /** Points of a sweep from one that is judged to the next: three an octave are as close as tone controls are steep. */
    private static final int STEP = SweptResponse.PER_OCTAVE / 3;

    private static final double CENTRE = 1000;

    /** The frequencies that both have, Hz: of a sweep three an octave, counted from 1 kHz. */
    List<Double> common() {
        ResponseCurve other = to.curve();
        return from.curve().points().stream()
                .map(ResponsePoint::frequency)
                .filter(f -> other.at(f).isPresent())
                .filter(f -> !from.swept() || isJudged(f))
                .toList();
    }

    private static boolean isJudged(double frequency) {
        double steps = SweptResponse.PER_OCTAVE * Math.log(frequency / CENTRE) / Math.log(2);
        return Math.abs(steps / STEP - Math.rint(steps / STEP)) * STEP < 0.1;
    }
}
