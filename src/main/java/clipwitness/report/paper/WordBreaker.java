package clipwitness.report.paper;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.regex.Pattern;

/**
 * Where a line may end: after a space, between two letters after a hyphen, a dash or a slash, and within a word too long for a column. A
 * number, a date and a quantity stay whole; the usual rules part "−11.0" after its point because they do not treat the minus sign as part of a number.
 */
final class WordBreaker implements FSTextBreaker {
    /** A word of so many letters may be parted: no word of the trade and few file names are so long. */
    private static final int LONGEST_WORD = 34;

    /** Letters of a piece; the narrowest column holds one. */
    private static final int PIECE = 8;

    private static final char NO_BREAK_SPACE = '\u00A0';

    /** What stands behind a number and stays with it: units with their prefixes, and the sign before an uncertainty. */
    private static final Pattern BEHIND_A_NUMBER = Pattern.compile(
            "(?:±|[%°]|°C|[mµnpk]?(?:V|A|s)|[kM]?(?:Hz|Ω)|dB[cV]?|K|ppm)(?![\\p{L}\\p{N}]).*", Pattern.DOTALL);

    private String text = "";
    private int at;
    private int wordStart;
    private int wordEnd;

    @Override
    public void setText(String newText) {
        Watch.stopIfInterrupted();
        text = newText;
        at = 0;
        word(0);
    }

    @Override
    public int next() {
        if (at >= text.length()) {
            return BreakIterator.DONE;
        }
        do {
            at++;
        } while (at < text.length() && !breaksBefore(at));
        return at;
    }

    private boolean breaksBefore(int index) {
        boolean tooLong = isTooLong(index);
        char last = text.charAt(index - 1);
        char next = text.charAt(index);
        if (last == ' ') {
            return next != ' ' && !partsAQuantity(index - 1);
        }
        boolean joint = last == '-' || last == '–' || last == '/';
        boolean letters = index > 1 && Character.isLetter(text.charAt(index - 2)) && Character.isLetter(next);
        return tooLong || (joint && letters);
    }

    /** Whether a space stands between a number and its unit or uncertainty, or behind the sign of an uncertainty. */
    private boolean partsAQuantity(int space) {
        char before = space > 0 ? text.charAt(space - 1) : ' ';
        if (before == '±') {
            return true;
        }
        return Character.isDigit(before)
                && BEHIND_A_NUMBER
                        .matcher(text)
                        .region(space + 1, text.length())
                        .lookingAt();
    }

    /** Whether a place lies within a word that is too long for a column, a piece or several on; a surrogate pair stays whole. */
    private boolean isTooLong(int index) {
        if (wordEnd <= index) {
            word(index);
        }
        return wordEnd - wordStart >= LONGEST_WORD
                && index > wordStart
                && (index - wordStart) % PIECE == 0
                && !Character.isLowSurrogate(text.charAt(index));
    }

    private void word(int start) {
        wordStart = start;
        wordEnd = start;
        while (wordEnd < text.length() && !isSpace(text.charAt(wordEnd))) {
            wordEnd++;
        }
    }

    private static boolean isSpace(char c) {
        return c == ' ' || c == NO_BREAK_SPACE || Character.isWhitespace(c);
    }
}
