package clipwitness.job;

import clipwitness.capture.InputException;
import clipwitness.capture.Origin;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a captures table. */
final class TableReader {
    private final RowReader rows;
    private final Faults faults;

    TableReader(SheetTerms terms, JobFiles files, Faults faults) {
        this.rows = new RowReader(terms, files);
        this.faults = faults;
    }

    /**
     * Reads the text of a table.
     *
     * @throws InputException if the text is no table
     */
    List<CaptureRow> read(String text) throws InputException {
        List<TableText.Line> lines = TableText.lines(text);
        if (lines.isEmpty()) {
            throw new InputException(
                    Origin.of(Job.TABLE_FILE),
                    "the table is empty",
                    "It needs a header row with the columns file, state and kind, and a row for each export");
        }
        Map<Integer, TableColumn> columns = columns(lines.get(0));
        List<CaptureRow> captures = new ArrayList<>();
        for (TableText.Line line : lines.subList(1, lines.size())) {
            TableRow row = row(line, lines.get(0), columns);
            if (columns.containsValue(TableColumn.FILE) && columns.containsValue(TableColumn.KIND)) {
                rows.read(row).ifPresent(captures::add);
            }
        }
        return captures;
    }

    private Map<Integer, TableColumn> columns(TableText.Line header) {
        Map<Integer, TableColumn> columns = new HashMap<>();
        for (int i = 0; i < header.cells().size(); i++) {
            String name = header.cell(i);
            Optional<TableColumn> column = TableColumn.of(name);
            if (column.filter(columns::containsValue).isPresent()) {
                faults.add(header.origin(name), "the column '" + name + "' stands twice", "Keep one of them");
            } else if (column.isPresent()) {
                columns.put(i, column.get());
            } else if (!name.isEmpty()) {
                String nearest = Nearest.to(name, TableColumn.codes()).orElseThrow();
                faults.add(
                        header.origin(name),
                        "unknown column '" + name + "'",
                        "The nearest known column is '" + nearest + "'");
            }
        }
        for (TableColumn needed : TableColumn.NEEDED) {
            if (!columns.containsValue(needed)) {
                faults.add(
                        header.origin(""),
                        "the column '" + needed.code() + "' is missing",
                        "Add it to the header row and fill it in every row");
            }
        }
        return columns;
    }

    private TableRow row(TableText.Line line, TableText.Line header, Map<Integer, TableColumn> columns) {
        Map<TableColumn, String> cells = new EnumMap<>(TableColumn.class);
        for (int i = 0; i < line.cells().size(); i++) {
            String cell = line.cell(i);
            if (!cell.isEmpty() && columns.containsKey(i)) {
                cells.put(columns.get(i), cell);
            } else if (!cell.isEmpty() && header.cell(i).isEmpty()) {
                faults.add(
                        line.origin(""),
                        "'" + cell + "' stands under no column",
                        "Put a cell that holds a comma in quotes, or give the column a name");
            }
        }
        return new TableRow(line.number(), cells, faults);
    }
}
