package clipwitness.measure.junction;

import clipwitness.measure.Measured;

/**
 * What a decade of current costs in voltage: the forward voltage at ten times a current less that at the current. An ideal junction has
 * n 59.16 mV at 25 °C; series resistance adds to it.
 *
 * @param from    the lower current, A
 * @param voltage V a decade
 */
public record DecadeSlope(double from, Measured voltage) {}
