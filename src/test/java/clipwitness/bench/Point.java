package clipwitness.bench;

/**
 * A function at one place.
 *
 * @param value its value
 * @param slope its derivative
 */
public record Point(double value, double slope) {}
