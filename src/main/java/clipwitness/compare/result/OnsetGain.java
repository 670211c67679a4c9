package clipwitness.compare.result;

import clipwitness.measure.Measured;

/**
 * Setting at which distortion reaches a mark.
 *
 * @param thdPercent  the mark
 * @param gainPercent percent of rotation, or why there is none
 */
public record OnsetGain(double thdPercent, Measured gainPercent) {}
