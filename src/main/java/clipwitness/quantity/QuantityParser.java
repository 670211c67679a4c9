package clipwitness.quantity;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a number, a space and an SI-prefixed unit: {@code 100 mV}, {@code 1 kHz}, {@code 2.2 kΩ}, {@code 5 %}. The space may be
 * missing. The decimal mark is a point in every locale; a comma is refused rather than guessed at. Decimals stay exact: 100 mV is the
 * {@code double} written 0.1.
 */
public final class QuantityParser {
    private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0\\u2007\\u2009\\u202f]+");

    private static final Pattern FORM = Pattern.compile(
            "(?<number>[+-]?(?:\\d{1,40}(?:\\.\\d{0,40})?|\\.\\d{1,40})(?:[eE][+-]?\\d{1,3})?) ?(?<unit>.*)");

    private static final Pattern COMMA = Pattern.compile("(?<whole>[+-]?\\d*),(?<fraction>\\d+)(?<rest>[^,]*)");

    /** Letters of a text that a message shows. */
    private static final int LONGEST = 40;

    private QuantityParser() {}

    /**
     * A quantity in a unit; a number without unit is taken to be in it.
     *
     * @param text   what was written
     * @param wanted unit that the quantity must have, before any prefix
     * @throws QuantityFormatException if the text is something else
     */
    public static Quantity parse(String text, Unit wanted) throws QuantityFormatException {
        return bareOrWithUnit(text, wanted).quantity();
    }

    /**
     * A quantity in a unit, as written; a number without unit is taken to be in it.
     *
     * @param text   what was written
     * @param wanted unit that the quantity must have, before any prefix
     * @throws QuantityFormatException if the text is something else
     */
    public static WrittenQuantity bareOrWithUnit(String text, Unit wanted) throws QuantityFormatException {
        WrittenQuantity written = written(text, Optional.of(wanted));
        return written.unit() == Unit.ONE
                ? new WrittenQuantity(written.number(), wanted, written.digit())
                : inUnit(written, text, wanted);
    }

    /**
     * A quantity in a unit, as written; the unit must stand there.
     *
     * @param text   what was written
     * @param wanted unit that the quantity must have, before any prefix
     * @throws QuantityFormatException if the text is something else
     */
    public static WrittenQuantity withUnit(String text, Unit wanted) throws QuantityFormatException {
        WrittenQuantity written = written(text, Optional.of(wanted));
        if (written.unit() == Unit.ONE && wanted != Unit.ONE) {
            throw refusal(text, "has no unit", wanted);
        }
        return inUnit(written, text, wanted);
    }

    /**
     * A quantity in any unit, as written; a number without unit is a pure number.
     *
     * @param text what was written
     * @throws QuantityFormatException if the text is no quantity
     */
    public static WrittenQuantity inAnyUnit(String text) throws QuantityFormatException {
        return written(text, Optional.empty());
    }

    private static WrittenQuantity written(String text, Optional<Unit> wanted) throws QuantityFormatException {
        String plain = SPACES.matcher(text).replaceAll(" ").strip().replace('\u2212', '-');
        refuseComma(text, plain);
        Unit example = wanted.orElse(Unit.VOLT);
        Matcher form = FORM.matcher(plain);
        if (!form.matches()) {
            String noun = wanted.map(u -> UnitWords.of(u).noun()).orElse("a number with a unit");
            throw refusal(text, "is not " + noun, example);
        }
        String unitText = form.group("unit");
        UnitText unit = UnitText.of(unitText).orElse(null);
        if (unit == null) {
            throw refusal(text, "has no unit that is known here: " + quoted(unitText), example);
        }
        BigDecimal number = new BigDecimal(form.group("number"));
        BigDecimal scaled = number.scaleByPowerOfTen(unit.exponent());
        if (Double.isInfinite(scaled.doubleValue())) {
            throw refusal(text, "is too large", example);
        }
        return new WrittenQuantity(scaled, unit.unit(), number.ulp().scaleByPowerOfTen(unit.exponent()));
    }

    private static WrittenQuantity inUnit(WrittenQuantity written, String text, Unit wanted)
            throws QuantityFormatException {
        if (written.unit() != wanted) {
            String found = UnitWords.of(written.unit()).noun();
            throw refusal(text, "is " + found + ", not " + UnitWords.of(wanted).noun(), wanted);
        }
        return written;
    }

    private static void refuseComma(String text, String plain) throws QuantityFormatException {
        Matcher comma = COMMA.matcher(plain);
        if (!comma.matches()) {
            return;
        }
        String whole = comma.group("whole");
        String fraction = comma.group("fraction");
        String decimal = (whole.matches("[+-]?") ? whole + "0" : whole) + "." + fraction + comma.group("rest");
        String grouped = whole + fraction + comma.group("rest");
        boolean ambiguous = fraction.length() == 3 && whole.matches("[+-]?[1-9]\\d{0,2}");
        throw new QuantityFormatException(
                quoted(text) + " holds a comma",
                ambiguous ? "Write " + decimal + " or " + grouped + ", whichever is meant" : "Write " + decimal);
    }

    private static QuantityFormatException refusal(String text, String what, Unit wanted) {
        return new QuantityFormatException(
                quoted(text) + " " + what, UnitWords.of(wanted).advice());
    }

    private static String quoted(String text) {
        String line = text.replaceAll("[\\s\\p{Cntrl}]+", " ");
        return "'" + (line.length() > LONGEST ? line.substring(0, LONGEST) + "…" : line) + "'";
    }
}
