package clipwitness.reading.time;

import clipwitness.reading.layout.Statement;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A stated number with marks between its thousands: {@code 250,000 Hz}. Where the mark may also be a decimal one, that is for the user to confirm.
 *
 * @param text  the number without the marks, and what follows it
 * @param doubt whether the mark may be a decimal one
 */
record GroupedDigits(String text, boolean doubt) {
    private static final Pattern GROUPS = Pattern.compile(
            "(?<digits>[1-9]\\d{0,2}(?<mark>[.,'\u2019 \u00a0\u202f])\\d{3}(?:\\k<mark>\\d{3})*)(?![\\d.,'])(?<rest>.*)");
    private static final Pattern CELL = Pattern.compile("0\\d\\d(?!\\d)\\D.*|0\\d\\d");
    private static final Pattern LEAD = Pattern.compile("[1-9]\\d{0,2}");
    private static final Pattern PREFIXED = Pattern.compile("(?i)\\s*(?:[kGµμun]|m(?!in)).*");
    private static final int ONE_GROUP = 7;

    /**
     * Reads the value of a statement; empty where it has no such marks.
     *
     * @param mark decimal mark of the rows
     */
    static Optional<GroupedDigits> of(Statement fact, char mark) {
        if (fact.values().size() > 1
                && LEAD.matcher(fact.value()).matches()
                && CELL.matcher(fact.values().get(1)).matches()) {
            return Optional.of(new GroupedDigits(fact.value() + fact.values().get(1), true));
        }
        Matcher m = GROUPS.matcher(fact.value());
        if (!m.matches()) {
            return Optional.empty();
        }
        char between = m.group("mark").charAt(0);
        boolean mayBeDecimal =
                (between == '.' || between == ',') && m.group("digits").length() <= ONE_GROUP;
        boolean decimal = mayBeDecimal
                && (between == mark || PREFIXED.matcher(m.group("rest")).matches());
        return decimal
                ? Optional.empty()
                : Optional.of(new GroupedDigits(
                        m.group("digits").replace(String.valueOf(between), "") + m.group("rest"), mayBeDecimal));
    }
}
