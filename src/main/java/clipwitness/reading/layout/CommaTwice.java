package clipwitness.reading.layout;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.reading.file.Line;
import clipwitness.reading.number.Delimiter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;

/** Finds files in which the comma separates the cells and is the decimal mark as well: {@code 0,0200,0,1405} for two values. */
final class CommaTwice {
    private static final Pattern FRACTION = Pattern.compile("\\d*(?:[eEdD][+-]?\\d+)?(?:\\s?[^\\d\\s.:+-]{1,8})?");

    private CommaTwice() {}

    /**
     * Leaves a style as it is, turns one column of numbers with decimal comma into that, or refuses.
     *
     * @param lines lines that are not blank
     * @param style what they seem to be
     */
    static RowStyle settle(String file, List<Line> lines, RowStyle style) throws InputException {
        if (style.dialect().delimiter() != Delimiter.COMMA
                || style.dialect().mark() != '.'
                || style.numbers() < 2
                || !style.pure()) {
            return style;
        }
        if (!couldBeFractions(List.of(first(lines, style.dialect())), style.dialect())) {
            return style;
        }
        List<Line> rows = lines.stream().filter(l -> isRow(l, style.dialect())).toList();
        int names = namesAbove(lines, rows.get(0), style.dialect());
        if (!couldBeFractions(rows, style.dialect()) || counts(rows, style.dialect())) {
            return style;
        }
        if (names == 1 && style.signature().equals("nn")) {
            return new RowStyle(
                    new Dialect(Delimiter.SEMICOLON, ',', style.dialect().annotated()),
                    "n",
                    style.rows(),
                    style.lines());
        }
        if (style.numbers() == 2 * names || zeroLed(rows, style.dialect())) {
            Line row = rows.get(rows.size() / 2);
            throw new InputException(
                    ErrorCode.BAD_NUMBER,
                    Origin.of(file, row.number()),
                    "the comma seems to be both delimiter and decimal mark: '" + shortened(row.text()) + "'",
                    "Export it again with a decimal point, or with semicolons or tabs between the columns");
        }
        return style;
    }

    private static Line first(List<Line> lines, Dialect dialect) {
        return lines.stream().filter(l -> isRow(l, dialect)).findFirst().orElseThrow();
    }

    private static boolean isRow(Line line, Dialect dialect) {
        return Signature.pure(dialect.signature(line.text().getBytes(StandardCharsets.UTF_8)));
    }

    /** Number of cells in the closest line of text above the first row; 0 where there is none. */
    private static int namesAbove(List<Line> lines, Line firstRow, Dialect dialect) {
        int names = 0;
        for (Line line : lines) {
            if (line.number() >= firstRow.number()) {
                break;
            }
            names = (int) dialect.split(line.text()).stream()
                    .filter(c -> !c.isEmpty())
                    .count();
        }
        return names;
    }

    /** Whether every second cell may be the fraction of the one before: digits only, and no point in any cell. */
    private static boolean couldBeFractions(List<Line> rows, Dialect dialect) {
        for (Line row : rows) {
            List<String> cells = dialect.split(row.text());
            for (int i = 0; i < cells.size(); i++) {
                boolean fraction = FRACTION.matcher(cells.get(i)).matches();
                if (row.text().indexOf('"') >= 0 || cells.get(i).indexOf('.') >= 0 || (i % 2 == 1 && !fraction)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether the first cells count the rows, as an index does and whole parts of samples do not. */
    private static boolean counts(List<Line> rows, Dialect dialect) {
        List<String> first =
                rows.stream().map(r -> dialect.split(r.text()).get(0)).toList();
        for (int i = 1; i < first.size(); i++) {
            if (dialect.number(first.get(i)) - dialect.number(first.get(i - 1)) != 1) { // NaN lands here too
                return false;
            }
        }
        return first.size() > 2;
    }

    /** Whether a second cell has a zero before other digits, as fractions have and whole numbers have not. */
    private static boolean zeroLed(List<Line> rows, Dialect dialect) {
        return rows.stream()
                .map(r -> dialect.split(r.text()))
                .anyMatch(cells -> cells.size() > 1
                        && cells.get(1).length() > 1
                        && cells.get(1).charAt(0) == '0');
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "...";
    }
}
