package clipwitness.reading;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;

/** The marks that exports write where a sample has no value: overflow, overload, not a number. */
final class GapMarks {
    private static final int LONGEST = 12;
    private static final Set<String> MARKS = Set.of(
            "nan",
            "inf",
            "infinity",
            "infin",
            "∞",
            "1.#inf",
            "1.#ind",
            "1.#qnan",
            "1.#snan",
            "1.#j",
            "nan(ind)",
            "nan(snan)",
            "ol",
            "o.l",
            "o.l.",
            "0l",
            "ovl",
            "ovld",
            "ovr",
            "ovfl",
            "over",
            "overflow",
            "overload",
            "overrange",
            "ofl",
            "uf",
            "ufl",
            "underflow",
            "clip",
            "clipped",
            "n/a",
            "na",
            "#n/a",
            "#num!",
            "#div/0!",
            "null",
            "invalid");

    /** Magnitudes from here on are marks too: instruments write 9.9e37 or 9.91e37 for overflow and no value. */
    static final double LARGEST_VALUE = 9e36;

    private GapMarks() {}

    /** Whether a cell, trimmed, is such a mark. */
    static boolean isMark(byte[] bytes, int from, int to) {
        int length = to - from;
        if (length == 0 || length > LONGEST) {
            return false;
        }
        String text = new String(bytes, from, length, StandardCharsets.UTF_8).toLowerCase(Locale.ROOT);
        if (consistsOf(text, '*') || consistsOf(text, '#') || (length > 1 && consistsOf(text, '-'))) {
            return true;
        }
        boolean signed = text.charAt(0) == '-' || text.charAt(0) == '+';
        return MARKS.contains(signed ? text.substring(1) : text.replace(',', '.'));
    }

    private static boolean consistsOf(String text, char mark) {
        return text.chars().allMatch(c -> c == mark);
    }
}
