package clipwitness.measure.junction;

import clipwitness.measure.Measured;

/**
 * Current at a reverse voltage.
 *
 * @param voltage V, below 0
 * @param current A, below 0 where it flows backwards; at most so much where it does not exceed its uncertainty
 */
public record Leakage(double voltage, Measured current) {}
