package clipwitness.report.model;

import java.util.List;

/**
 * Rows of figures in one unit, decimal marks under one another.
 *
 * @param rows rows
 * @param unit their unit with its prefix, empty for pure numbers
 */
public record Block(List<Row> rows, String unit) {
    /** Copies what it is given. */
    public Block {
        rows = List.copyOf(rows);
    }

    /** A title with the unit behind it. */
    public String titled(String title) {
        return unit.isEmpty() ? title : title + ", " + unit;
    }
}
