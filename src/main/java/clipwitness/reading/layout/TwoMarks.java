package clipwitness.reading.layout;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.reading.file.Line;
import clipwitness.reading.number.Delimiter;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Refuses files in which some columns have a decimal point and others a decimal comma, {@code 0.000004;0,0298}: taken apart at every mark, such rows
 * look like rows of three numbers.
 */
final class TwoMarks {
    private static final int OF_TEN = 9;
    private static final Pattern NUMBER =
            Pattern.compile("\\s*\"?[+\\-\u2212]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+)(?:[eE][+-]?\\d+)?\"?\\s*");
    private static final List<String> DELIMITERS = List.of(";", "\t");

    private TwoMarks() {}

    /** Looks at rows for which nothing but a mixture of delimiters was found. */
    static void refuse(String file, List<Line> lines, RowStyle style) throws InputException {
        if (style.dialect().delimiter() != Delimiter.MIXED) {
            return;
        }
        for (String delimiter : DELIMITERS) {
            List<Line> rows =
                    lines.stream().filter(l -> isRow(l.text(), delimiter)).toList();
            Optional<Line> both = rows.stream()
                    .filter(l -> l.text().indexOf('.') >= 0 && l.text().indexOf(',') >= 0)
                    .findFirst();
            if (both.isPresent() && 10 * rows.size() >= OF_TEN * style.rows()) {
                String text = both.get().text().strip();
                throw new InputException(
                        ErrorCode.BAD_NUMBER,
                        Origin.of(file, both.get().number()),
                        "some columns have a decimal point and others a decimal comma: '"
                                + text.substring(0, Math.min(text.length(), 60)) + "'",
                        "Export it again with one decimal mark");
            }
        }
    }

    private static boolean isRow(String line, String delimiter) {
        String[] cells = line.split(delimiter, -1);
        if (cells.length < 2) {
            return false;
        }
        for (String cell : cells) {
            if (!NUMBER.matcher(cell).matches()) {
                return false;
            }
        }
        return true;
    }
}
