package clipwitness.quantity;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * A quantity as somebody wrote it, exact: {@code 16.10 mV} has the number 0.01610, the unit V and the last digit 0.00001.
 *
 * @param number value in the unit itself, prefix resolved
 * @param unit   unit without prefix; {@link Unit#ONE} where none was written or wanted
 * @param digit  value of one step of the last digit written, in the unit, above 0
 */
public record WrittenQuantity(BigDecimal number, Unit unit, BigDecimal digit) {
    /** Checks that all parts are there. */
    public WrittenQuantity {
        Objects.requireNonNull(number, "number");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(digit, "digit");
    }

    /** The quantity; its value is the {@code double} next to the number. */
    public Quantity quantity() {
        return new Quantity(number.doubleValue(), unit);
    }

    /** A hundredth of the number: 3 % is the ratio 0.03. */
    public double ratio() {
        return number.movePointLeft(2).doubleValue();
    }
}
