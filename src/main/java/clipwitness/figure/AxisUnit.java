package clipwitness.figure;

import clipwitness.quantity.Unit;
import java.math.BigDecimal;

/**
 * A unit with the prefix that an axis' numbers are written in: one for the whole axis.
 *
 * @param symbol   prefix and unit, {@code mV}; empty for a pure number
 * @param exponent power of ten of the prefix
 */
record AxisUnit(String symbol, int exponent) {
    private static final String PREFIXES = "pnµm kMG";
    private static final int NO_PREFIX = 4;

    /**
     * The unit with the prefix that brings the largest number between 1 and 1000; no prefix for percent, levels and angles.
     *
     * @param unit    unit
     * @param largest largest magnitude on the axis, in the unit
     */
    static AxisUnit of(Unit unit, double largest) {
        if (unit == Unit.ONE) {
            return new AxisUnit("", 0);
        }
        if (!takesPrefix(unit) || !(largest > 0)) {
            return new AxisUnit(name(unit), 0);
        }
        int thousands = (int) Math.floor(Math.log10(largest * (1 + 1e-9)) / 3);
        int index = Math.max(0, Math.min(PREFIXES.length() - 1, NO_PREFIX + thousands));
        String prefix = index == NO_PREFIX ? "" : PREFIXES.substring(index, index + 1);
        return new AxisUnit(prefix + unit.symbol(), 3 * (index - NO_PREFIX));
    }

    private static boolean takesPrefix(Unit unit) {
        return switch (unit) {
            case VOLT, AMPERE, SECOND, OHM, HERTZ -> true;
            case CELSIUS, KELVIN, DECIBEL, DBC, DEGREE, PERCENT, ONE -> false;
        };
    }

    private static String name(Unit unit) {
        return unit == Unit.DEGREE ? "°" : unit.symbol();
    }

    /** What an axis is called: quantity, comma, unit. */
    String label(String quantity) {
        return symbol.isEmpty() ? quantity : quantity + ", " + symbol;
    }

    /** A mark's number in this unit. */
    String text(BigDecimal value, int decimals) {
        return NumberForms.plain(value.scaleByPowerOfTen(-exponent), decimals);
    }

    /** Digits after the point that a step needs in this unit. */
    int decimals(BigDecimal step) {
        return Math.max(
                0, step.stripTrailingZeros().scaleByPowerOfTen(-exponent).scale());
    }
}
