package clipwitness.job;

import clipwitness.quantity.Quantity;

/**
 * A meter reading.
 *
 * @param quantity value with its unit
 * @param digit    value of the last digit as written, in the unit
 */
public record RailReading(Quantity quantity, double digit) {}
