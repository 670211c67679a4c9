package clipwitness.measure;

import java.util.OptionalDouble;

/**
 * Corners of the filters that were taken off a wave to straighten its transfer curve.
 *
 * @param lowPass  of the low-pass, Hz; empty where none was needed
 * @param highPass of the high-pass, Hz; empty where none was needed
 */
public record FilterCorners(OptionalDouble lowPass, OptionalDouble highPass) {}
