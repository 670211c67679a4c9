package clipwitness.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

/**
 * Text of numbers on paper. Values are given in their unit and printed with an SI prefix where the unit takes one; the space before
 * the unit does not break, and the minus sign is a true one (SI brochure, 9th edition, 5.4). Numbers must be finite.
 */
public final class NumberText {
    private static final String MINUS = "\u2212";

    /** Digits of an expanded uncertainty: at most two (JCGM 100:2008, 7.2.6). */
    private static final MathContext UNCERTAINTY_DIGITS = new MathContext(2, RoundingMode.HALF_UP);

    private static final int MOST_DIGITS = 8;
    private static final int DIGITS_ALONE = 4;
    private static final int THOUSANDTHS = 3;
    private static final int BOUND_DIGITS = 2;
    private static final int DIGITS_OF_FREQUENCY = 3;

    /** Power of ten of the last digit of a bound in percent. */
    private static final int FINEST_BOUND_PERCENT = -2;

    private static final MathContext NOMINAL_DIGITS = new MathContext(6, RoundingMode.HALF_UP);

    private final char decimalMark;

    private NumberText(char decimalMark) {
        this.decimalMark = decimalMark;
    }

    /**
     * Numbers as a language writes them: only the decimal mark differs.
     *
     * @param languageTag language tag after BCP 47, for example {@code en} or {@code de}
     */
    public static NumberText in(String languageTag) {
        Locale locale = Locale.forLanguageTag(languageTag);
        return new NumberText(DecimalFormatSymbols.getInstance(locale).getDecimalSeparator());
    }

    /**
     * A value with its expanded uncertainty, {@code 23.1 ± 1.1 %}: the uncertainty with two digits, the value with the same decimals.
     * A value shows at most eight digits, a level at most three decimals, its uncertainty then rounded up. Without uncertainty it shows four digits.
     *
     * @param value    value in the unit
     * @param unit     unit
     * @param expanded expanded uncertainty in the unit, 0 or more
     */
    public String measured(double value, Unit unit, double expanded) {
        return parts(value, unit, expanded, 0, false).full();
    }

    /**
     * Decimals of a value beside which its uncertainty has two digits; further ones would mean nothing.
     *
     * @param expanded expanded uncertainty, 0 or more
     * @param most     decimals that are shown at most
     */
    public static int decimals(double expanded, int most) {
        return expanded > 0 ? Math.max(0, Math.min(most, 1 - exponent(expanded))) : most;
    }

    /**
     * The same in significant digits, at least one.
     *
     * @param value    value
     * @param expanded expanded uncertainty, 0 or more
     * @param most     digits that are shown at most
     */
    public static int digits(double value, double expanded, int most) {
        return value == 0 || !(expanded > 0)
                ? most
                : Math.max(1, Math.min(most, exponent(value) - exponent(expanded) + 2));
    }

    private static int exponent(double number) {
        return (int) Math.floor(Math.log10(Math.abs(number)));
    }

    /** A number that is written with a decimal point, with the decimal mark of the language and a true minus before it. */
    public String written(String number) {
        String local = number.replace('.', decimalMark);
        return local.startsWith("-") ? MINUS + local.substring(1) : local;
    }

    /**
     * A value with some significant digits, {@code 23.1 mV}.
     *
     * @param value  value in the unit
     * @param unit   unit
     * @param digits digits that are shown, 1 or more
     */
    public String rounded(double value, Unit unit, int digits) {
        BigDecimal number = exact(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        Prefix prefix = Prefix.of(number, unit);
        return withUnit(plain(toStep(number, step(number, digits)), prefix, false), prefix, unit);
    }

    /**
     * A value as somebody set it, {@code 1 kHz} or {@code 62.5 %}: no zeros at the end, at most six digits.
     *
     * @param value value in the unit
     * @param unit  unit
     */
    public String nominal(double value, Unit unit) {
        BigDecimal number = exact(value).round(NOMINAL_DIGITS).stripTrailingZeros();
        Prefix prefix = Prefix.of(number, unit);
        return withUnit(plain(number, prefix, false), prefix, unit);
    }

    /**
     * A frequency of a response: three digits without zeros at the end, {@code 125 Hz}, {@code 12.7 kHz}, {@code 2 kHz}.
     *
     * @param hertz frequency, Hz
     */
    public String frequency(double hertz) {
        BigDecimal three = exact(hertz).round(new MathContext(DIGITS_OF_FREQUENCY, RoundingMode.HALF_UP));
        return nominal(three.doubleValue(), Unit.HERTZ);
    }

    /**
     * A value with some decimals and no prefix, {@code 0.50 dB}.
     *
     * @param value    value in the unit
     * @param unit     unit
     * @param decimals decimals that are shown, 0 or more
     */
    public String fixed(double value, Unit unit, int decimals) {
        return withUnit(plain(toStep(exact(value), -decimals), Prefix.NONE, false), Prefix.NONE, unit);
    }

    /**
     * The size of a value with some decimals and no prefix, rounded up, so that the size is at most what is printed.
     *
     * @param value    value in the unit
     * @param unit     unit
     * @param decimals decimals that are shown, 0 or more
     */
    public String atMost(double value, Unit unit, int decimals) {
        BigDecimal size = exact(value).abs().setScale(decimals, RoundingMode.UP);
        return withUnit(plain(size, Prefix.NONE, false), Prefix.NONE, unit);
    }

    /** The same for a change, which shows its plus sign too, {@code +0.02 dB}; what rounds to 0 has no sign. */
    public String signed(double value, Unit unit, int decimals) {
        return withUnit(plain(toStep(exact(value), -decimals), Prefix.NONE, true), Prefix.NONE, unit);
    }

    /**
     * A measured value in its parts, with the prefix that suits a row of values.
     *
     * @param value    value in the unit
     * @param unit     unit
     * @param expanded expanded uncertainty in the unit, 0 or more
     * @param largest  largest magnitude of the row as {@link #shown shown}, in the unit; 0 for a single value
     * @param signed   whether a plus sign is shown
     */
    public NumberParts parts(double value, Unit unit, double expanded, double largest, boolean signed) {
        Rounded rounded = Rounded.of(exact(value), exact(expanded), mostDecimals(unit));
        return parts(rounded, Prefix.of(rounded.largest().max(exact(largest).abs()), unit), unit, signed);
    }

    /**
     * What something lies below, in its parts, with the prefix that suits a row of values: rounded up to two digits, levels to whole decibels, percent
     * to no less than a hundredth of one. More digits of a bound mean nothing, and no oscilloscope resolves less than that hundredth.
     *
     * @param value   value in the unit
     * @param unit    unit
     * @param largest largest magnitude of the row as {@link #shown shown}, in the unit; 0 for a single value
     */
    public NumberParts bound(double value, Unit unit, double largest) {
        int digits = step(exact(value), BOUND_DIGITS);
        int step = isLevel(unit) ? 0 : unit == Unit.PERCENT ? Math.max(FINEST_BOUND_PERCENT, digits) : digits;
        BigDecimal number = exact(value).setScale(-step, RoundingMode.CEILING);
        Prefix prefix = Prefix.of(number.max(exact(largest).abs()), unit);
        return new NumberParts(plain(number, prefix, false), "", symbol(prefix, unit));
    }

    /**
     * The larger magnitude of a value and its uncertainty, both rounded as they are printed: what the prefix of a row must suit.
     *
     * @param value    value in the unit
     * @param unit     unit
     * @param expanded expanded uncertainty in the unit, 0 or more
     */
    public static double shown(double value, Unit unit, double expanded) {
        return Rounded.of(exact(value), exact(expanded), mostDecimals(unit))
                .largest()
                .doubleValue();
    }

    /**
     * A measured value in its parts without prefix, to at most so many decimals; an uncertainty that has more is rounded up.
     *
     * @param value    value in the unit
     * @param unit     unit
     * @param expanded expanded uncertainty in the unit, 0 or more
     * @param decimals decimals that are shown at most, 0 or more
     */
    public NumberParts coarse(double value, Unit unit, double expanded, int decimals) {
        return parts(Rounded.of(exact(value), exact(expanded), decimals), Prefix.NONE, unit, false);
    }

    private NumberParts parts(Rounded rounded, Prefix prefix, Unit unit, boolean signed) {
        return new NumberParts(
                plain(rounded.value(), prefix, signed),
                rounded.isKnown() ? plain(rounded.uncertainty(), prefix, false) : "",
                symbol(prefix, unit));
    }

    /** Decimals of a unit that mean something: nobody hears, and no instrument here holds, less than a thousandth of a decibel, percent or degree. */
    private static int mostDecimals(Unit unit) {
        return switch (unit) {
            case DECIBEL, DBC, PERCENT, DEGREE -> THOUSANDTHS;
            default -> Integer.MAX_VALUE;
        };
    }

    private static boolean isLevel(Unit unit) {
        return unit == Unit.DECIBEL || unit == Unit.DBC;
    }

    /** A value and its uncertainty to the same power of ten. */
    private record Rounded(BigDecimal value, BigDecimal uncertainty, int step) {
        static Rounded of(BigDecimal value, BigDecimal expanded, int mostDecimals) {
            if (expanded.signum() < 0) {
                throw new IllegalArgumentException("an expanded uncertainty must be 0 or more but is " + expanded);
            }
            int wanted = expanded.signum() > 0
                    ? NumberText.step(expanded.round(UNCERTAINTY_DIGITS), 2)
                    : NumberText.step(value, DIGITS_ALONE);
            int finest = value.signum() == 0 ? wanted : NumberText.step(value, MOST_DIGITS);
            int step = Math.max(Math.max(wanted, finest), -mostDecimals);
            RoundingMode mode = step > wanted ? RoundingMode.CEILING : RoundingMode.HALF_UP;
            return new Rounded(toStep(value, step), expanded.setScale(-step, mode), step);
        }

        boolean isKnown() {
            return uncertainty.signum() > 0;
        }

        BigDecimal largest() {
            return value.abs().max(uncertainty);
        }
    }

    /**
     * A number with some significant digits for a message, without exponent and with a decimal point whatever the language.
     *
     * @param value  finite
     * @param digits digits that are shown at most, 1 or more
     */
    public static String plain(double value, int digits) {
        BigDecimal rounded = exact(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString();
    }

    private static BigDecimal exact(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("only finite numbers have a text but this is " + value);
        }
        return BigDecimal.valueOf(value);
    }

    /** Power of ten of the last of some digits of a number; 0 for 0. */
    private static int step(BigDecimal number, int digits) {
        return number.signum() == 0 ? 0 : Prefix.exponentOf(number) - digits + 1;
    }

    private static BigDecimal toStep(BigDecimal number, int step) {
        return number.setScale(-step, RoundingMode.HALF_UP);
    }

    private String plain(BigDecimal number, Prefix prefix, boolean signed) {
        String text =
                number.abs().movePointLeft(prefix.exponent()).toPlainString().replace('.', decimalMark);
        String plus = signed && number.signum() > 0 ? "+" : "";
        return (number.signum() < 0 ? MINUS : plus) + text;
    }

    private static String withUnit(String number, Prefix prefix, Unit unit) {
        return new NumberParts(number, "", symbol(prefix, unit)).text();
    }

    private static String symbol(Prefix prefix, Unit unit) {
        return switch (unit) {
            case ONE -> "";
            case DEGREE -> "°";
            default -> prefix.symbol() + unit.symbol();
        };
    }
}
