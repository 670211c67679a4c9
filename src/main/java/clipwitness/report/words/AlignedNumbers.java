package clipwitness.report.words;

import java.util.List;

/**
 * Numbers under one another: padded so that their decimal marks stand in one line when the column is set flush right. Digits of
 * the report's fonts are all of one width, and so is the figure space.
 */
public final class AlignedNumbers {
    private static final String NO_BREAK = "\u00A0";
    private static final String FIGURE_SPACE = "\u2007";

    private AlignedNumbers() {}

    /** The texts, padded on the right. Texts that are no numbers stay as they are. */
    public static List<String> align(List<String> texts) {
        int most = texts.stream().mapToInt(t -> decimals(t)).max().orElse(-1);
        return texts.stream().map(t -> pad(t, most)).toList();
    }

    /** Digits after the mark; -1 where the text is no number. */
    private static int decimals(String text) {
        if (text.isEmpty() || !Character.isDigit(text.charAt(text.length() - 1))) {
            return -1;
        }
        int mark = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','));
        return mark < 0 ? 0 : text.length() - mark - 1;
    }

    private static String pad(String text, int most) {
        int own = decimals(text);
        if (own < 0 || own == most) {
            return text;
        }
        String mark = own == 0 ? NO_BREAK : "";
        return text + mark + FIGURE_SPACE.repeat(most - own);
    }
}
