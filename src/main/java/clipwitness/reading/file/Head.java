package clipwitness.reading.file;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * The complete lines of an export's first part.
 *
 * @param lines   the lines in order
 * @param last    complete lines from the end of a longer file, without their numbers
 * @param lineEnd what ends a line
 */
public record Head(List<Line> lines, List<Line> last, LineEnd lineEnd) {
    /** Longer lines than this hold no row of samples. */
    public static final int LONGEST_LINE = 1 << 15;

    public Head {
        lines = List.copyOf(lines);
        last = List.copyOf(last);
    }

    /** Splits the first part into lines; the last one is left out where it is cut. */
    public static Head of(SourceFile file) throws InputException {
        LineEnd end = LineEnd.of(file.head());
        refuseLongLines(file, end);
        List<Line> lines = split(file.head(), file.headCharset(), end, file.whole());
        List<Line> last = split(file.end(), file.headCharset(), end, false).stream()
                .skip(1) // its start is cut
                .map(l -> new Line(0, l.text()))
                .toList();
        return new Head(lines, last, end);
    }

    private static List<Line> split(byte[] bytes, Charset charset, LineEnd end, boolean whole) {
        List<Line> lines = new ArrayList<>();
        int start = 0;
        for (int i = 0; i <= bytes.length; i++) {
            if (i == bytes.length ? whole && start < i : bytes[i] == end.last()) {
                lines.add(new Line(lines.size() + 1, text(bytes, start, i, charset)));
                start = i + 1;
            }
        }
        return lines;
    }

    private static void refuseLongLines(SourceFile file, LineEnd end) throws InputException {
        int line = 1;
        int length = 0;
        for (byte b : file.head()) {
            length = b == end.last() ? 0 : length + 1;
            line += b == end.last() ? 1 : 0;
            if (length > LONGEST_LINE) {
                throw tooLong(file.name(), line);
            }
        }
    }

    /** What the user is told about a line that is no row. */
    public static InputException tooLong(String name, int line) {
        return new InputException(
                ErrorCode.TOO_LARGE,
                Origin.of(name, line),
                "the line is longer than " + LONGEST_LINE + " characters; an export has one row a sample",
                "If the values of a channel stand side by side, turn rows and columns in a spreadsheet");
    }

    /** One line's text: a single stray byte elsewhere does not spoil a line that is UTF-8. */
    private static String text(byte[] bytes, int from, int to, Charset charset) {
        int end = to;
        while (end > from && bytes[end - 1] == '\r') {
            end--;
        }
        boolean sequences = !charset.equals(StandardCharsets.UTF_8) && Encoding.isUtf8(bytes, from, end);
        return new String(bytes, from, end - from, sequences ? StandardCharsets.UTF_8 : charset);
    }
}
