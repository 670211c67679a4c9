package clipwitness.compare.result;

import clipwitness.capture.Condition;
import clipwitness.measure.Measured;

/**
 * Where one state distorts as the other does.
 *
 * @param condition       condition of the series, gain left open
 * @param fromGainPercent setting of the state compared with
 * @param toGainPercent   setting of the other state that gives the same distortion, percent of rotation
 */
public record EquivalentGain(Condition condition, double fromGainPercent, Measured toGainPercent) {}
