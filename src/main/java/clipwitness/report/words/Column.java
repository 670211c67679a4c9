package clipwitness.report.words;

import java.util.List;

/**
 * Numbers under one another: padded so that their decimal marks stand in one line when the column is set flush right. Digits of
 * the report's fonts are all of one width, and so is the figure space.
 */
public final class Column {
    private static final String FIGURE_SPACE = "\u2007";

    private Column() {}

    /** The texts, padded on the right. Texts that are no numbers stay as they are. */
    public static List<String> align(List<String> texts, String decimalMark) {
        int most = texts.stream().mapToInt(t -> decimals(t, decimalMark)).max().orElse(-1);
        return texts.stream().map(t -> pad(t, decimalMark, most)).toList();
    }

    /** Digits after the mark; -1 where the text is no number. */
    private static int decimals(String text, String decimalMark) {
        if (text.isEmpty() || !Character.isDigit(text.charAt(text.length() - 1))) {
            return -1;
        }
        int mark = text.indexOf(decimalMark);
        return mark < 0 ? 0 : text.length() - mark - decimalMark.length();
    }

    private static String pad(String text, String decimalMark, int most) {
        int own = decimals(text, decimalMark);
        if (own < 0 || own == most) {
            return text;
        }
        String mark = own == 0 ? Numerals.NO_BREAK : "";
        return text + mark + FIGURE_SPACE.repeat(most - own);
    }
}
