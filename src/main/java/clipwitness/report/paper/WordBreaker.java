package clipwitness.report.paper;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;

/**
 * Where a line may end: after a space, and between two letters after a hyphen, a dash or a slash. A number, a date and a quantity stay
 * whole; the usual rules part "−11.0" after its point because they know no minus sign.
 */
final class WordBreaker implements FSTextBreaker {
    private String text = "";
    private int at;

    @Override
    public void setText(String newText) {
        text = newText;
        at = 0;
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
        char last = text.charAt(index - 1);
        char next = text.charAt(index);
        if (last == ' ') {
            return next != ' ';
        }
        boolean joint = last == '-' || last == '–' || last == '/';
        return joint && index > 1 && Character.isLetter(text.charAt(index - 2)) && Character.isLetter(next);
    }
}
