package clipwitness.report.words;

import clipwitness.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Numbers as the report prints them: a true minus sign, no-break space before the unit, the uncertainty to two significant
 * digits and the value to the same place (JCGM 100, 7.2.6).
 */
public final class Numerals {
    /** Keeps number and unit together. */
    static final String NO_BREAK = "\u00A0";

    private static final int SIGNIFICANT_OF_UNCERTAINTY = 2;
    private static final int SIGNIFICANT_OF_EXACT = 4;
    private static final int MOST_DECIMALS = 9;

    private final String decimalMark;

    /** Numbers with a decimal mark. */
    Numerals(String decimalMark) {
        this.decimalMark = decimalMark;
    }

    /** Decimal places that show two significant digits of an uncertainty; for 0, four of the value. */
    static int decimals(double uncertainty, double value) {
        if (uncertainty > 0) {
            double rounded = new BigDecimal(uncertainty)
                    .round(new java.math.MathContext(SIGNIFICANT_OF_UNCERTAINTY))
                    .doubleValue();
            return places(rounded, SIGNIFICANT_OF_UNCERTAINTY);
        }
        return value == 0 ? 0 : places(value, SIGNIFICANT_OF_EXACT);
    }

    private static int places(double value, int significant) {
        int exponent = (int) Math.floor(Math.log10(Math.abs(value)));
        return Math.max(0, Math.min(MOST_DECIMALS, significant - 1 - exponent));
    }

    /** A number with so many decimals. */
    String fixed(double value, int decimals) {
        return fixed(value, decimals, RoundingMode.HALF_EVEN);
    }

    /** A number with so many decimals, rounded in a stated way. */
    String fixed(double value, int decimals, RoundingMode mode) {
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, mode);
        String digits = rounded.abs().toPlainString().replace(".", decimalMark);
        return rounded.signum() < 0 ? "−" + digits : digits;
    }

    /** The same with a plus sign where the number is above 0. */
    String signed(double value, int decimals) {
        String text = fixed(value, decimals);
        return value > 0 && !text.startsWith("−") ? "+" + text : text;
    }

    /** A stated number, with no more decimals than it has. */
    public String plain(double value) {
        BigDecimal exact = new BigDecimal(Double.toString(value)).stripTrailingZeros();
        return fixed(value, Math.max(0, exact.scale()));
    }

    /** A number with its unit. */
    String with(String number, String unit) {
        return unit.isEmpty() ? number : number + NO_BREAK + unit;
    }

    /** A stated quantity with an SI prefix: {@code 100 mV}. */
    public String stated(double value, Unit unit) {
        Scale scale = Scale.of(unit, Math.abs(value));
        return with(plain(roundOff(value / scale.factor())), scale.symbol());
    }

    /** Takes out the last binary digits, so that 0.1 V is 100 mV and not 100.00000000000001. */
    private static double roundOff(double value) {
        return new BigDecimal(value).round(new java.math.MathContext(6)).doubleValue();
    }

    /** A probability or ratio as percent with one decimal. */
    public String share(double ratio) {
        return with(fixed(100 * ratio, 1), "%");
    }

    /** A positive number to two significant digits. */
    public String rough(double value) {
        return fixed(value, decimals(value, value));
    }
}
