package clipwitness.report.model;

import java.util.List;

/**
 * A table.
 *
 * @param title   what it shows
 * @param corner  head of the first column
 * @param columns heads of the other columns
 * @param rows    rows
 * @param notes   lines under the table: why a figure is missing, each reason once
 */
public record Table(String title, String corner, List<String> columns, List<Row> rows, List<String> notes) {
    /** Copies what it is given. */
    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /** The same in two parts that end evenly, to stand side by side; notes and title are this table's. */
    public List<Table> halves() {
        return Parts.halves(rows).stream()
                .map(half -> new Table("", corner, columns, half))
                .toList();
    }

    /** A table with nothing to explain. */
    public Table(String title, String corner, List<String> columns, List<Row> rows) {
        this(title, corner, columns, rows, List.of());
    }
}
