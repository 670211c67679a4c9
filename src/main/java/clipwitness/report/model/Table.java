package clipwitness.report.model;

import java.util.List;

/**
 * A table.
 *
 * @param title   what it shows
 * @param corner  head of the first column
 * @param columns heads of the other columns
 * @param rows    rows
 */
public record Table(String title, String corner, List<String> columns, List<Row> rows) {
    /** Copies what it is given. */
    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }
}
