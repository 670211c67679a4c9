package clipwitness.report.page;

import java.io.Writer;
import java.util.ArrayList;
import java.util.List;

/** Takes a page while it is filled, with the place in the template of each piece. */
final class PageText extends Writer {
    private final StringBuilder text = new StringBuilder();
    private final List<FilledPage.Mark> marks = new ArrayList<>();

    /** What follows comes from this line. */
    void mark(String file, int line) {
        int last = marks.size() - 1;
        if (last >= 0 && marks.get(last).at() == text.length()) {
            marks.remove(last);
        }
        marks.add(new FilledPage.Mark(text.length(), file, line));
    }

    /** Characters so far. */
    int length() {
        return text.length();
    }

    /** The page. */
    FilledPage filled(TemplateSource source) {
        return new FilledPage(text.toString(), marks, source);
    }

    @Override
    public void write(char[] characters, int from, int length) {
        text.append(characters, from, length);
    }

    @Override
    public void flush() {
        // lies in memory
    }

    @Override
    public void close() {
        // lies in memory
    }
}
