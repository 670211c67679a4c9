package clipwitness.compare.result;

import clipwitness.capture.Condition;
import clipwitness.measure.Measured;

/**
 * Change of one harmonic when both waves are set equally loud: change of A_k / rms.
 *
 * @param condition under which condition
 * @param order     1 or more
 * @param change    in dB
 */
public record LevelMatchedHarmonic(Condition condition, int order, Measured change) {}
