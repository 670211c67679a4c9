package clipwitness.reading;

import clipwitness.capture.InputException;
import clipwitness.capture.Origin;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where the samples stand in the head of a file.
 *
 * @param style   how their rows look
 * @param columns places of the cells that hold numbers, from 0
 * @param before  lines in front of the first row
 * @param rows    rows within the head, blank lines left out
 */
record DataBlock(RowStyle style, List<Integer> columns, List<Line> before, List<Line> rows) {
    DataBlock {
        columns = List.copyOf(columns);
        before = List.copyOf(before);
        rows = List.copyOf(rows);
    }

    /** The first line that looks like a row and has another such line, a damaged one, or none, after it. */
    static DataBlock find(String file, List<Line> lines, RowStyle style) throws InputException {
        List<Integer> columns = IntStream.range(0, style.signature().length())
                .filter(style::isNumber)
                .boxed()
                .toList();
        List<Line> filled = lines.stream().filter(l -> !l.blank()).toList();
        for (int i = 0; i < filled.size(); i++) {
            boolean last = i + 1 == filled.size();
            if (isRow(filled.get(i), style, columns) && (last || holdsNumber(filled.get(i + 1), style, columns))) {
                return new DataBlock(style, columns, filled.subList(0, i), filled.subList(i, filled.size()));
            }
        }
        throw new InputException(
                Origin.of(file),
                "no two rows of numbers follow each other",
                "Is this the export itself? Export the samples, not the settings or a picture");
    }

    Dialect dialect() {
        return style.dialect();
    }

    /** Number of the line with the first row. */
    int firstLine() {
        return rows.get(0).number();
    }

    /** Number of cells that a row may have: those of most rows, or of the first where the preamble stands to the right. */
    int widest() {
        String first = Signature.of(dialect().split(rows.get(0).text()), dialect());
        return Math.max(first.length(), style.signature().length());
    }

    /** The cell of a row at a place, empty where the row is shorter. */
    String cell(int row, int place) {
        return cellAt(dialect().split(rows.get(row).text()), place);
    }

    /** A column's texts in the first rows. */
    List<String> firstCells(int place, int atMost) {
        return IntStream.range(0, Math.min(atMost, rows.size()))
                .mapToObj(r -> cell(r, place))
                .toList();
    }

    /** Statements that stand beside the samples, in columns which further down are empty. */
    List<Fact> besideRows() {
        List<Fact> facts = new ArrayList<>();
        for (Line row : rows) {
            List<String> cells = dialect().split(row.text());
            List<String> beside = IntStream.range(0, cells.size())
                    .filter(i -> !isColumn(i))
                    .mapToObj(cells::get)
                    .toList();
            facts.addAll(Preamble.factsOf(beside, row.number()));
        }
        return facts;
    }

    private boolean isColumn(int place) {
        return place < style.signature().length() && style.signature().charAt(place) != Signature.EMPTY;
    }

    private static boolean holdsNumber(Line line, RowStyle style, List<Integer> columns) {
        List<String> cells = style.dialect().split(line.text());
        return columns.stream().anyMatch(place -> style.dialect().isNumber(cellAt(cells, place)));
    }

    private static boolean isRow(Line line, RowStyle style, List<Integer> columns) {
        List<String> cells = style.dialect().split(line.text());
        int numbers = 0;
        for (int place : columns) {
            String cell = cellAt(cells, place);
            boolean number = style.dialect().isNumber(cell);
            if (!number && (!cell.isEmpty() || place == columns.get(0))) {
                return false;
            }
            numbers += number ? 1 : 0;
        }
        return numbers >= Math.min(2, columns.size());
    }

    private static String cellAt(List<String> cells, int place) {
        return place < cells.size() ? cells.get(place) : "";
    }
}
