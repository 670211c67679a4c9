package clipwitness.reading.file;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
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

    /** For a first guess of their number. */
    private static final int BYTES_OF_A_LINE = 16;

    public Head {
        lines = List.copyOf(lines);
        last = List.copyOf(last);
    }

    /** Splits the first part into lines; the last one is left out where it is cut. */
    public static Head of(SourceFile file) throws InputException {
        LineEnd end = LineEnd.of(file.head());
        int[] ends = ends(file.head(), end);
        refuseLongLines(file, ends);
        List<Line> lines = lines(file.head(), file.headCharset(), ends, file.whole());
        List<Line> last = lines(file.end(), file.headCharset(), ends(file.end(), end), false).stream()
                .skip(1) // its start is cut
                .map(l -> new Line(0, l.text()))
                .toList();
        return new Head(lines, last, end);
    }

    /** Places where lines end, and the end of the bytes. */
    private static int[] ends(byte[] bytes, LineEnd end) {
        byte last = end.last();
        int[] ends = new int[bytes.length / BYTES_OF_A_LINE + 1];
        int count = 0;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == last) {
                ends = count + 1 < ends.length ? ends : Arrays.copyOf(ends, 2 * ends.length);
                ends[count++] = i;
            }
        }
        ends[count++] = bytes.length;
        return Arrays.copyOf(ends, count);
    }

    /** The lines, the last one only of a whole text that does not end with a line end. */
    private static List<Line> lines(byte[] bytes, Charset charset, int[] ends, boolean whole) {
        List<Line> lines = new ArrayList<>(ends.length);
        int start = 0;
        for (int i = 0; i < ends.length; i++) {
            if (i + 1 < ends.length || (whole && start < ends[i])) {
                lines.add(new Line(i + 1, text(bytes, start, ends[i], charset)));
            }
            start = ends[i] + 1;
        }
        return lines;
    }

    private static void refuseLongLines(SourceFile file, int[] ends) throws InputException {
        int start = 0;
        for (int i = 0; i < ends.length; i++) {
            if (ends[i] - start > LONGEST_LINE) {
                throw tooLong(file.name(), i + 1);
            }
            start = ends[i] + 1;
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
