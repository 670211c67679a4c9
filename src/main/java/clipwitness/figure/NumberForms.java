package clipwitness.figure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as they stand on axes and in the sentences of a figure: decimal point, true minus. */
final class NumberForms {
    /** The minus sign, as wide as a plus. */
    static final char MINUS = '−';

    private NumberForms() {}

    /** A number with so many digits after the point; a zero has no sign. */
    static String plain(BigDecimal value, int decimals) {
        BigDecimal rounded = value.setScale(decimals, RoundingMode.HALF_EVEN);
        String digits = rounded.abs().toPlainString();
        return rounded.signum() < 0 ? MINUS + digits : digits;
    }

    /** A number with so many digits after the point. */
    static String plain(double value, int decimals) {
        return plain(BigDecimal.valueOf(value), decimals);
    }

    /** A number with its sign, plus included; a zero has none. */
    static String signed(double value, int decimals) {
        String text = plain(value, decimals);
        return BigDecimal.valueOf(value)
                                .setScale(decimals, RoundingMode.HALF_EVEN)
                                .signum()
                        > 0
                ? "+" + text
                : text;
    }

    /** A number as short as it can be said, to at most so many digits after the point: 50, 12.5. */
    static String shortest(double value, int most) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(most, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return plain(rounded, Math.max(0, rounded.scale()));
    }

    /** Digits after the point that leave a number so many significant ones, never fewer than none. */
    static int decimalsFor(double value, int significant) {
        if (!(Math.abs(value) > 0)) { // NaN lands here too
            return 0;
        }
        return Math.max(0, significant - 1 - (int) Math.floor(Math.log10(Math.abs(value))));
    }
}
