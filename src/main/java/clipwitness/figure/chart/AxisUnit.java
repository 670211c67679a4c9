package clipwitness.figure.chart;

import clipwitness.quantity.NumberText;
import clipwitness.quantity.Prefix;
import clipwitness.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A unit with the prefix that an axis' numbers are written in: one for the whole axis, the one that suits its largest number.
 *
 * @param unit   unit
 * @param prefix prefix
 */
record AxisUnit(Unit unit, Prefix prefix) {
    /**
     * The unit with its prefix.
     *
     * @param unit    unit
     * @param largest largest magnitude on the axis, in the unit
     */
    static AxisUnit of(Unit unit, double largest) {
        return new AxisUnit(unit, Prefix.of(new BigDecimal(largest, MathContext.DECIMAL32), unit));
    }

    /** What an axis is called: quantity, comma, unit. */
    String label(String quantity) {
        return switch (unit) {
            case ONE -> quantity;
            case DEGREE -> quantity + ", °";
            default -> quantity + ", " + prefix.symbol() + unit.symbol();
        };
    }

    /** A mark's number in this unit, with the decimals that a step needs. */
    String text(BigDecimal value, BigDecimal step, NumberText numbers) {
        int decimals = Math.max(
                0, step.stripTrailingZeros().movePointLeft(prefix.exponent()).scale());
        double number = value.movePointLeft(prefix.exponent()).doubleValue();
        return numbers.fixed(number, Unit.ONE, decimals);
    }
}
