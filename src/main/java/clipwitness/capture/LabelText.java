package clipwitness.capture;

import java.util.regex.Pattern;

/**
 * Names, labels and notes as they can go on paper and on a terminal: no tab, no line end, no control character, none of the characters that turn
 * the direction of a text and are invisible (Unicode Standard Annex 9, 2.1 to 2.5), no half of a surrogate pair.
 */
public final class LabelText {
    private static final String UNSEEN = "\\p{Cc}\\u2028\\u2029\\u202a-\\u202e\\u2066-\\u2069\\ufeff";
    private static final Pattern APART = Pattern.compile("[ " + UNSEEN + "]*[" + UNSEEN + "][ " + UNSEEN + "]*");
    private static final Pattern LINE_END = Pattern.compile(" *(?:\\r\\n|[\\n\\r\\u0085\\u2028\\u2029]) *");
    private static final Pattern HALF = Pattern.compile("\\p{Cs}");

    private LabelText() {}

    /**
     * A text on one line: a run of such characters, with the spaces around it, becomes one space.
     *
     * @param text any text
     * @return the text without space at its ends, empty where nothing is left
     */
    public static String line(String text) {
        return HALF.matcher(APART.matcher(text).replaceAll(" "))
                .replaceAll("\ufffd")
                .strip();
    }

    /**
     * The same for a text of several lines: line feeds stay.
     *
     * @param text any text
     * @return the text without space at its ends
     */
    public static String lines(String text) {
        return LINE_END.splitAsStream(text)
                .map(LabelText::line)
                .reduce((before, after) -> before + "\n" + after)
                .orElse("")
                .strip();
    }

    /** Whether nothing of a text would be changed but space at its ends. */
    public static boolean isOneLine(String text) {
        return line(text).equals(text.strip());
    }
}
