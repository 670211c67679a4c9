package clipwitness.reading.number;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A value of the preamble with whatever follows it: {@code 500 mV/div}.
 *
 * @param value      the number as written, without its unit's prefix resolved
 * @param resolution half a unit of the last digit written
 * @param rest       what follows the number
 */
public record ValueText(double value, double resolution, String rest) {
    private static final Pattern NUMBER = Pattern.compile(
            "\\s*(?<number>[+-]?(?<digits>\\d*(?:[.,]\\d*)?)(?:[eEdD](?<power>[+-]?\\d{1,3}))?)(?<rest>.*)");

    /** Reads a value; empty where the text does not start with a number. A comma counts as decimal mark. */
    public static Optional<ValueText> parse(String text) {
        Matcher m = NUMBER.matcher(text);
        if (!m.matches() || m.group("digits").chars().noneMatch(Character::isDigit)) {
            return Optional.empty();
        }
        String digits = m.group("digits").replace(',', '.');
        int power = m.group("power") == null ? 0 : Integer.parseInt(m.group("power"));
        int fraction = digits.indexOf('.') < 0 ? 0 : digits.length() - 1 - digits.indexOf('.');
        double value = Double.parseDouble(
                m.group("number").replace(',', '.').replace('d', 'e').replace('D', 'e'));
        return Optional.of(new ValueText(
                value, 0.5 * Math.pow(10, power - fraction), m.group("rest").strip()));
    }

    /** The unit that follows the number, where it is one. */
    public Optional<WrittenUnit> unit() {
        return WrittenUnit.parse(rest);
    }
}
