package clipwitness.quantity;

import java.math.BigDecimal;

/**
 * Prefix that a number is printed with: the one that leaves one to three digits before the decimal mark.
 *
 * @param symbol   symbol, empty for none
 * @param exponent power of ten
 */
public record Prefix(String symbol, int exponent) {
    private static final String[] SYMBOLS = {"f", "p", "n", "µ", "m", "", "k", "M", "G"};
    private static final int LOWEST = -15;
    private static final int HIGHEST = 9;

    /** No prefix. */
    public static final Prefix NONE = new Prefix("", 0);

    /** Prefix for a number that is rounded already, in a unit; none for units that take none, and none for 0. */
    public static Prefix of(BigDecimal number, Unit unit) {
        if (number.signum() == 0 || !takesPrefix(unit)) {
            return NONE;
        }
        int exponent = Math.floorDiv(exponentOf(number), 3) * 3;
        int kept = Math.max(LOWEST, Math.min(HIGHEST, exponent));
        return new Prefix(SYMBOLS[(kept - LOWEST) / 3], kept);
    }

    /** Power of ten of a number's first digit that is not 0: 2 for 230. */
    static int exponentOf(BigDecimal number) {
        return number.precision() - number.scale() - 1;
    }

    private static boolean takesPrefix(Unit unit) {
        return switch (unit) {
            case VOLT, AMPERE, SECOND, OHM, HERTZ -> true;
            case CELSIUS, KELVIN, DECIBEL, DBC, DEGREE, PERCENT, ONE -> false;
        };
    }
}
