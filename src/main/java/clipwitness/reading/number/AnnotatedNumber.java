package clipwitness.reading.number;

import clipwitness.quantity.Unit;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number that is not written plainly: with its unit, as in {@code -12.0 mV}, or as a time of day, as in {@code 12:34:56.789}, whose date counts
 * for nothing: a record over midnight runs back in time.
 *
 * @param number the same number as digits, decimal mark and exponent, in the unit without prefix
 * @param unit   the unit without prefix: V, A or s
 * @param clock  whether it is a time of day, which may have another decimal mark than the file
 */
public record AnnotatedNumber(String number, Unit unit, boolean clock) {
    private static final int LONGEST = 60;
    private static final int NOON = 12;
    private static final Set<Unit> UNITS = EnumSet.of(Unit.VOLT, Unit.AMPERE, Unit.SECOND);
    private static final Pattern WITH_UNIT = Pattern.compile(
            "(?<number>[+-]?(?:\\d+[.,]?\\d*|[.,]\\d+))(?:[eE](?<power>[+-]?\\d{1,3}))?\\s*(?<unit>[^\\d\\s.,;:+-]{1,8})");
    private static final Pattern CLOCK = Pattern.compile("(?:\\d{1,4}[-/.]\\d{1,2}[-/.]\\d{1,4}[ T]\\s*)?"
            + "(?:(?<hours>\\d{1,2}):)?(?<minutes>\\d{1,2}):(?<seconds>\\d{2})(?<fraction>[.,]\\d{1,12})?"
            + "(?:\\s*(?<half>[aApP])\\.?[mM]\\.?|\\s*(?:Z|[+-]\\d{2}:?\\d{2}))?");

    /** Reads such a number; empty where the text is none. */
    public static Optional<AnnotatedNumber> parse(String text) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        Matcher clock = CLOCK.matcher(text);
        if (clock.matches() && (clock.group("hours") != null || clock.group("fraction") != null)) {
            return Optional.of(new AnnotatedNumber(sinceMidnight(clock), Unit.SECOND, true));
        }
        Matcher number = WITH_UNIT.matcher(text);
        return number.matches()
                ? WrittenUnit.parse(number.group("unit"))
                        .filter(u -> UNITS.contains(u.unit()))
                        .map(u -> withoutPrefix(number, u))
                : Optional.empty();
    }

    /** The number with this decimal mark, as far as one can tell. */
    String plain(char mark) {
        return clock ? number.replace(',', mark).replace('.', mark) : number;
    }

    private static String sinceMidnight(Matcher clock) {
        int written = clock.group("hours") == null ? 0 : Integer.parseInt(clock.group("hours"));
        int hours = clock.group("half") == null
                ? written
                : written % NOON + ("pP".contains(clock.group("half")) ? NOON : 0);
        int minutes = Integer.parseInt(clock.group("minutes"));
        int seconds = Integer.parseInt(clock.group("seconds"));
        String fraction = clock.group("fraction") == null ? "" : clock.group("fraction");
        return 3_600 * hours + 60 * minutes + seconds + fraction;
    }

    private static AnnotatedNumber withoutPrefix(Matcher number, WrittenUnit unit) {
        int power = number.group("power") == null ? 0 : Integer.parseInt(number.group("power"));
        int exponent = power + unit.exponent();
        return new AnnotatedNumber(number.group("number") + (exponent == 0 ? "" : "e" + exponent), unit.unit(), false);
    }
}
