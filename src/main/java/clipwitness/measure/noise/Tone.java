package clipwitness.measure.noise;

/**
 * A line that was taken off a record before its spectrum.
 *
 * @param frequency Hz
 * @param power     mean square as fitted, the noise at the line with it, V²
 * @param variance  of the power, V⁴
 */
record Tone(double frequency, double power, double variance) {}
