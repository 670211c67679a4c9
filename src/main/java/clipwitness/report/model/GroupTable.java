package clipwitness.report.model;

import java.util.List;

/**
 * A table whose rows stand in named groups.
 *
 * @param title   what it shows
 * @param corner  heads of the first two columns: the groups' and the rows'
 * @param columns heads of the other columns
 * @param groups  groups
 * @param notes   lines under the table: why a figure is missing, each reason once
 */
public record GroupTable(
        String title, List<String> corner, List<String> columns, List<Group> groups, List<String> notes) {
    /** Copies what it is given. */
    public GroupTable {
        corner = List.copyOf(corner);
        columns = List.copyOf(columns);
        groups = List.copyOf(groups);
        notes = List.copyOf(notes);
    }

    /** Columns that a line under the table spans: two heads, and two for each figure with its uncertainty. */
    public String span() {
        return Integer.toString(2 + 2 * columns.size());
    }

    /**
     * Rows that belong together.
     *
     * @param name name
     * @param unit unit of their figures, empty where they have none or each row its own
     * @param rows rows
     */
    public record Group(String name, String unit, List<Row> rows) {
        /** Copies what it is given. */
        public Group {
            rows = List.copyOf(rows);
        }
    }
}
