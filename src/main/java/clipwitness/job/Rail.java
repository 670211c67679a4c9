package clipwitness.job;

import clipwitness.quantity.Quantity;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Meter readings of one rail or one supply current.
 *
 * @param name      name
 * @param expected  expectation
 * @param tolerance limit of its own, a ratio; else the job's limit {@code rail} holds
 * @param readings  reading of each state, in the sheet's order
 */
public record Rail(
        String name, Optional<Quantity> expected, OptionalDouble tolerance, Map<String, RailReading> readings) {
    /** Copies what it is given. */
    public Rail {
        readings = Collections.unmodifiableMap(new LinkedHashMap<>(readings));
    }
}
