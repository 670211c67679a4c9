package clipwitness.measure.pair;

import clipwitness.measure.Measured;

/**
 * Two mean cycles laid on one another by a shift in time and a scale.
 *
 * @param shift    by how much the second wave is later, in cycles, -0.5 to 0.5, both beginning where their fundamental goes up through zero
 * @param scale    factor on the first wave that brings it nearest to the second, above 0
 * @param turned   whether the first wave was turned over
 * @param depth    null depth, dB
 */
public record Alignment(double shift, double scale, boolean turned, Measured depth) {}
