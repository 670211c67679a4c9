package clipwitness.reading;

import clipwitness.capture.InputException;
import clipwitness.capture.Origin;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

    /** Finds the rows. */
    static DataBlock find(String file, List<Line> lines, RowStyle style) throws InputException {
        List<Integer> columns = IntStream.range(0, style.signature().length())
                .filter(style::isNumber)
                .boxed()
                .toList();
        List<Line> filled = lines.stream().filter(l -> !l.blank()).toList();
        int first = new RowFinder(filled, style, columns).first();
        if (first < 0) {
            throw new InputException(
                    Origin.of(file),
                    "no two rows of numbers follow each other",
                    "Is this the export itself? Export the samples, not the settings or a picture");
        }
        return new DataBlock(style, columns, filled.subList(0, first), filled.subList(first, filled.size()));
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

    /**
     * Statements that stand beside the samples, in columns which further down are empty. Where two records stand side by side, each
     * with its statements in front, statements of one key on one line become one, with a value for each record.
     */
    List<Fact> besideRows() {
        List<Fact> facts = new ArrayList<>();
        for (Line row : rows) {
            Map<String, List<String>> byKey = new LinkedHashMap<>();
            for (List<String> group : groupsBeside(dialect().split(row.text()))) {
                for (Fact fact : Preamble.factsOf(group, row.number())) {
                    byKey.computeIfAbsent(fact.key(), k -> new ArrayList<>()).addAll(fact.values());
                }
            }
            byKey.forEach((key, values) -> facts.add(new Fact(key, values, row.number())));
        }
        return facts;
    }

    /** Cells outside the columns of samples, those between two columns together. */
    private List<List<String>> groupsBeside(List<String> cells) {
        List<List<String>> groups = new ArrayList<>();
        boolean open = false;
        for (int place = 0; place < cells.size(); place++) {
            boolean beside = place >= style.signature().length() || style.isEmpty(place);
            if (beside && !open) {
                groups.add(new ArrayList<>());
            }
            if (beside) {
                groups.get(groups.size() - 1).add(cells.get(place));
            }
            open = beside;
        }
        return groups;
    }

    private static String cellAt(List<String> cells, int place) {
        return place < cells.size() ? cells.get(place) : "";
    }
}
