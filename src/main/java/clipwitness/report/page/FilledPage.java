package clipwitness.report.page;

import clipwitness.fault.Origin;
import java.util.List;

/**
 * A filled page that knows which line of which file of the template each of its lines came from.
 *
 * @param text   the page
 * @param marks  where pieces of it came from, in order
 * @param source the template
 */
public record FilledPage(String text, List<Mark> marks, TemplateSource source) {
    /**
     * A piece begins.
     *
     * @param at   index of its first character in the page
     * @param file file of the template
     * @param line its line there, from 1
     */
    record Mark(int at, String file, int line) {}

    /** Copies the marks. */
    public FilledPage {
        marks = List.copyOf(marks);
    }

    /**
     * The place in the template.
     *
     * @param line line of the filled page, from 1; 0 where none is known
     */
    public Origin placeOf(int line) {
        int start = startOf(line);
        int end = text.indexOf('\n', start) < 0 ? text.length() : text.indexOf('\n', start);
        while (start < end && Character.isWhitespace(text.charAt(start))) {
            start++;
        }
        Mark mark = new Mark(0, TemplateSource.PAGE, 0);
        for (Mark m : marks) {
            if (m.at <= start) {
                mark = m;
            }
        }
        boolean known = line > 0 && mark.line > 0;
        return Origin.of(source.nameOf(mark.file), known ? mark.line + breaks(mark.at, start) : 0);
    }

    /**
     * The place of a style element's line in the template.
     *
     * @param number which style element, from 1
     * @param line   line in it, from 1
     */
    public Origin placeOfStyle(int number, int line) {
        int at = -1;
        for (int i = 0; i < number; i++) {
            at = text.indexOf("<style", at + 1);
        }
        int content = text.indexOf('>', Math.max(0, at)) + 1;
        while (content < text.length() && Character.isWhitespace(text.charAt(content))) {
            content++; // the renderer counts from the first line that holds something
        }
        return placeOf(at < 0 ? 0 : line + breaks(0, content));
    }

    private int breaks(int from, int to) {
        return (int) text.substring(from, to).chars().filter(c -> c == '\n').count();
    }

    private int startOf(int line) {
        int start = 0;
        for (int i = 1; i < line; i++) {
            int end = text.indexOf('\n', start);
            if (end < 0) {
                return start;
            }
            start = end + 1;
        }
        return start;
    }
}
