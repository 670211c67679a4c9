package clipwitness.bench;

/**
 * A function at one place.
 *
 * @param value its value
 * @param slope its derivative
 */
record Point(double value, double slope) {}
