package clipwitness.reading;

import clipwitness.capture.InputException;
import clipwitness.capture.Origin;
import java.util.ArrayList;
import java.util.List;

/**
 * The complete lines of an export's first part.
 *
 * @param lines   the lines in order
 * @param lineEnd what ends a line
 */
record Head(List<Line> lines, LineEnd lineEnd) {
    /** Longer lines than this hold no row of samples. */
    static final int LONGEST_LINE = 1 << 15;

    Head {
        lines = List.copyOf(lines);
    }

    /** Splits the first part into lines; the last one is left out where it is cut. */
    static Head of(SourceFile file) throws InputException {
        byte[] bytes = file.head();
        LineEnd end = LineEnd.of(bytes);
        List<Line> lines = new ArrayList<>();
        int start = 0;
        for (int i = 0; i <= bytes.length; i++) {
            boolean ends = i == bytes.length ? file.whole() && start < i : bytes[i] == end.last();
            if (i - start > LONGEST_LINE) {
                throw tooLong(file.name(), lines.size() + 1);
            }
            if (ends) {
                lines.add(new Line(lines.size() + 1, text(file, start, i)));
                start = i + 1;
            }
        }
        return new Head(lines, end);
    }

    /** What the user is told about a line that is no row. */
    static InputException tooLong(String name, int line) {
        return new InputException(
                Origin.of(name, line),
                "the line is longer than " + LONGEST_LINE + " characters; an export has one row a sample",
                "If the values of a channel stand side by side, turn rows and columns in a spreadsheet");
    }

    private static String text(SourceFile file, int from, int to) {
        int end = to;
        while (end > from && file.head()[end - 1] == '\r') {
            end--;
        }
        return new String(file.head(), from, end - from, file.headCharset());
    }
}
