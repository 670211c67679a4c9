package clipwitness.reading.layout;

import clipwitness.reading.file.Line;
import java.util.List;

/**
 * Finds the first row of samples among the lines of a head. From the first two lines that look exactly like most rows it goes back as
 * far as rows reach: rows with statements beside them, and rows on the far side of one damaged row, belong to the samples too, so that
 * the damage is reported and not taken for a header.
 */
final class RowFinder {
    private static final int ROWS_OF_STEP = 10;
    private static final double WIDEST_STEP = 2.5;

    private final List<Line> lines;
    private final RowStyle style;
    private final List<Integer> columns;
    private int full;

    RowFinder(List<Line> lines, RowStyle style, List<Integer> columns) {
        this.lines = lines;
        this.style = style;
        this.columns = columns;
    }

    /** Index of the first row, or -1 where no two rows follow each other. */
    int first() {
        int first = -1;
        for (int i = 0; i < lines.size() && first < 0; i++) {
            boolean last = i + 1 == lines.size();
            if (exact(i) && (last || exact(i + 1) || damaged(i + 1))) {
                first = i;
            }
        }
        full = first;
        while (first > 0) {
            int before = first;
            if (isRow(first - 1) || isBare(first - 1)) {
                first--;
            } else if (first > 1 && damaged(first - 1) && exact(first - 2)) {
                first -= 2;
            }
            if (first == before) {
                break;
            }
        }
        return first;
    }

    /** Nothing but the number in the first column, which goes on as it does in the rows below: a row whose channels have no value yet. */
    private boolean isBare(int line) {
        List<String> cells = cells(line);
        boolean alone = columns.size() > 1
                && isNumber(cells, columns.get(0))
                && columns.stream().skip(1).allMatch(place -> cell(cells, place).isEmpty());
        double step = alone ? number(line + 1) - number(line) : Double.NaN;
        int last = full;
        double widest = 0;
        while (last + 1 < lines.size() && last < full + ROWS_OF_STEP) {
            widest = Math.max(widest, number(last + 1) - number(last));
            last++;
        }
        return step >= 0 && step <= WIDEST_STEP * widest;
    }

    private double number(int line) {
        return style.dialect().number(cell(cells(line), columns.get(0)));
    }

    private boolean exact(int line) {
        String signature = Signature.of(cells(line), style.dialect());
        return signature.equals(style.signature())
                || (style.pure()
                        && Signature.pure(signature)
                        && signature.length() <= style.signature().length()
                        && isRow(line));
    }

    private boolean damaged(int line) {
        List<String> cells = cells(line);
        return columns.stream().anyMatch(place -> isNumber(cells, place));
    }

    /** Numbers or gaps in all columns of numbers, and no key in front of them that would make them a statement. */
    private boolean isRow(int line) {
        List<String> cells = cells(line);
        int numbers = 0;
        for (int place : columns) {
            boolean number = isNumber(cells, place);
            if (!number && (!cell(cells, place).isEmpty() || place == columns.get(0))) {
                return false;
            }
            numbers += number ? 1 : 0;
        }
        int key = columns.get(0) - 1;
        boolean statement = key >= 0 && style.isEmpty(key) && !cell(cells, key).isEmpty();
        return numbers >= Math.min(2, columns.size()) && !statement;
    }

    private boolean isNumber(List<String> cells, int place) {
        return style.dialect().isNumber(cell(cells, place));
    }

    private List<String> cells(int line) {
        return style.dialect().split(lines.get(line).text());
    }

    private static String cell(List<String> cells, int place) {
        return place < cells.size() ? cells.get(place) : "";
    }
}
