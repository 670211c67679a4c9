package clipwitness.job.read;

import clipwitness.capture.LabelText;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.job.CaptureRow;
import clipwitness.job.Job;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads a captures table. */
final class TableReader {
    private final RowReader rows;
    private final Faults faults;

    TableReader(SheetReader.Terms terms, JobFiles files, Faults faults) {
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
                    ErrorCode.EMPTY,
                    Origin.of(Job.TABLE_FILE),
                    "the table is empty",
                    "It needs a header row with the columns file, state and kind, and a row for each export");
        }
        TableText.Line header = lines.get(0);
        refuseWithoutHeader(lines);
        Map<Integer, TableColumn> columns = columns(header);
        List<TableRow> table = lines.subList(1, lines.size()).stream()
                .map(line -> row(line, header, columns))
                .toList();
        refuseMissingColumns(header, columns, table);
        if (rows.areExchanged(table)) {
            faults.add(
                    ErrorCode.BAD_TABLE,
                    header.origin(TableColumn.FILE.code()),
                    "the cells under 'file' are states, and those under 'state' are files",
                    "Exchange these two names in the header row");
            return List.of();
        }
        boolean otherScale = GainScales.refused(table);
        return table.stream()
                .map(r -> otherScale ? r.without(TableColumn.GAIN) : r)
                .map(rows::read)
                .flatMap(Optional::stream)
                .toList();
    }

    /** A first row without the name of any column is no header row, which is one fault and not one a cell. */
    private static void refuseWithoutHeader(List<TableText.Line> lines) throws InputException {
        Optional<TableText.Line> header = lines.stream()
                .filter(l -> l.cells().stream().anyMatch(c -> TableColumn.of(c).isPresent()))
                .findFirst();
        if (header.equals(Optional.of(lines.get(0)))) {
            return;
        }
        throw new InputException(
                ErrorCode.BAD_TABLE,
                lines.get(0).origin(""),
                "this first row holds no name of a column",
                header.map(h -> "Remove what stands above the header row, line " + h.number())
                        .orElse(
                                "Put a header row above it: file,state,kind and what else the table has, gain for instance"));
    }

    private Map<Integer, TableColumn> columns(TableText.Line header) {
        Map<Integer, TableColumn> columns = new HashMap<>();
        for (int i = 0; i < header.cells().size(); i++) {
            String name = header.cell(i);
            Optional<TableColumn> column = TableColumn.of(name);
            if (column.filter(columns::containsValue).isPresent()) {
                faults.add(
                        ErrorCode.TWICE,
                        header.origin(name),
                        "the column " + NameWords.quoted(name) + " occurs twice",
                        "Keep one of them");
            } else if (column.isPresent()) {
                columns.put(i, column.get());
            } else if (!name.isEmpty()) {
                faults.add(
                        ErrorCode.UNKNOWN_KEY,
                        header.origin(name),
                        "unknown column " + NameWords.quoted(name),
                        NameWords.nearest(name, TableColumn.codes(), "column"));
            }
        }
        return columns;
    }

    private void refuseMissingColumns(TableText.Line header, Map<Integer, TableColumn> columns, List<TableRow> table) {
        Set<TableColumn> needed = EnumSet.of(TableColumn.FILE, TableColumn.KIND);
        for (TableRow row : table) {
            needed.add(row.isJunction() ? TableColumn.DEVICE : TableColumn.STATE);
        }
        needed.removeAll(columns.values());
        for (TableColumn missing : needed) {
            faults.add(
                    ErrorCode.MISSING_KEY,
                    header.origin(""),
                    "the column '" + missing.code() + "' is missing",
                    "Add it to the header row and fill it in below");
        }
    }

    private TableRow row(TableText.Line line, TableText.Line header, Map<Integer, TableColumn> columns) {
        Map<TableColumn, String> cells = new EnumMap<>(TableColumn.class);
        for (int i = 0; i < line.cells().size(); i++) {
            boolean note = columns.get(i) == TableColumn.NOTE;
            String cell = note ? LabelText.lines(line.cell(i)) : LabelText.line(line.cell(i));
            if (!cell.isEmpty() && columns.containsKey(i)) {
                refuseUnseen(line, columns.get(i), line.cell(i));
                cells.put(columns.get(i), cell);
            } else if (!cell.isEmpty() && header.cell(i).isEmpty()) {
                faults.add(
                        ErrorCode.BAD_TABLE,
                        line.origin(""),
                        NameWords.quoted(cell) + " is under no column",
                        "Put a cell that holds a comma in quotes, or give the column a name");
            }
        }
        return new TableRow(line.number(), Set.copyOf(columns.values()), cells, faults);
    }

    /** Labels are tidied; a file could not be found under a tidied name. */
    private void refuseUnseen(TableText.Line line, TableColumn column, String cell) {
        boolean names = column == TableColumn.FILE || column == TableColumn.INPUT_FILE;
        if (names && !LabelText.isOneLine(cell)) {
            faults.add(
                    ErrorCode.BAD_CHARACTER,
                    line.origin(column.code()),
                    NameWords.quoted(cell) + " holds a tab, a line end or another character that cannot be seen",
                    "Rename the file, and write its new name here");
        }
    }
}
