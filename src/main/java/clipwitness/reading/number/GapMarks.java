package clipwitness.reading.number;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** The marks that exports write where a sample has no value: overflow, overload, not a number. */
public final class GapMarks {
    private static final int LONGEST = 12;
    /** What C runtimes write for infinity and not a number, and spreadsheets for a fault, in every language. */
    private static final Pattern FORMS =
            Pattern.compile("1[.,]#[a-z]+\\d*|#[\\p{L}/0-9]+[!?]|[<>]\\s*[+-]?\\d+(?:[.,]\\d+)?");

    private static final Set<String> MARKS = Set.of(
            "nan",
            "inf",
            "infinity",
            "infin",
            "∞",
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
            "#nv",
            "of",
            "ovf",
            "ovrflw",
            "ovflw",
            "o/l",
            "null",
            "invalid");

    /** The marks that say that there is no value at all, and nothing of the range. */
    private static final Set<String> ABSENT = Set.of("nan", "n/a", "na", "#n/a", "#nv", "null");

    /** Magnitudes from here on are marks too: instruments write 9.9e37 or 9.91e37 for overflow and no value. */
    public static final double LARGEST_VALUE = 9e36;

    private GapMarks() {}

    /** Whether a cell, trimmed, is such a mark. */
    public static boolean isMark(byte[] bytes, int from, int to) {
        int length = to - from;
        if (length == 0 || length > LONGEST) {
            return false;
        }
        if (isOfNumbers(bytes, from, to)) {
            return length > 1 && isOf(bytes, from, to, '-');
        }
        String text = new String(bytes, from, length, StandardCharsets.UTF_8).toLowerCase(Locale.ROOT);
        if (consistsOf(text, '*') || consistsOf(text, '#')) {
            return true;
        }
        boolean signed = text.charAt(0) == '-' || text.charAt(0) == '+';
        String bare = signed ? text.substring(1) : text.replace(',', '.');
        return MARKS.contains(bare) || FORMS.matcher(bare).matches();
    }

    /** Whether a cell, trimmed, is such a mark and says that there is no value: nothing of overflow. */
    public static boolean isAbsent(byte[] bytes, int from, int to) {
        boolean letter = to > from && (Character.isLetter(bytes[from]) || bytes[from] == '#' || bytes[from] == '-');
        return letter
                && to - from <= LONGEST
                && ABSENT.contains(new String(bytes, from, to - from, StandardCharsets.UTF_8)
                        .toLowerCase(Locale.ROOT)
                        .replaceFirst("^-", ""));
    }

    /** Whether a cell has only what numbers are made of: most cells have, and no mark but hyphens has. */
    private static boolean isOfNumbers(byte[] bytes, int from, int to) {
        for (int i = from; i < to; i++) {
            boolean digit = bytes[i] >= '0' && bytes[i] <= '9';
            if (!digit && bytes[i] != '.' && bytes[i] != ',' && bytes[i] != '-' && bytes[i] != '+') {
                return false;
            }
        }
        return true;
    }

    private static boolean isOf(byte[] bytes, int from, int to, char mark) {
        for (int i = from; i < to; i++) {
            if (bytes[i] != mark) {
                return false;
            }
        }
        return true;
    }

    private static boolean consistsOf(String text, char mark) {
        return text.chars().allMatch(c -> c == mark);
    }
}
