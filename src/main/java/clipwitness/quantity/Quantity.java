package clipwitness.quantity;

import java.util.Objects;

/**
 * A number with its unit, without prefix: 100 mV is {@code (0.1, VOLT)}.
 *
 * @param value finite, in the unit itself
 * @param unit  unit without prefix
 */
public record Quantity(double value, Unit unit) {
    /** Checks that the value is finite. */
    public Quantity {
        Objects.requireNonNull(unit, "unit");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a quantity must be finite but is " + value + " " + unit.symbol());
        }
    }
}
