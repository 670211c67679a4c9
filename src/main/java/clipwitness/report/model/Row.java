package clipwitness.report.model;

import java.util.List;

/**
 * A row of a table.
 *
 * @param name  head of the row
 * @param unit  unit of its figures, empty where they have none or each its own
 * @param cells cells, as many as the table has columns
 * @param note  a line under the row, empty where there is none
 */
public record Row(String name, String unit, List<Cell> cells, String note) {
    /** Copies what it is given. */
    public Row {
        cells = List.copyOf(cells);
    }

    /** The same row with a line under it. */
    public Row noted(String line) {
        return new Row(name, unit, cells, line);
    }

    /** Columns that a line under the row spans: its head, and two for each cell with its uncertainty. */
    public String span() {
        return Integer.toString(1 + 2 * cells.size());
    }
}
