package clipwitness.job;

import clipwitness.capture.Origin;
import java.util.Map;
import java.util.Optional;

/**
 * A row of the captures table, cells by column.
 *
 * @param line   1-based line on which the row begins
 * @param cells  cells that are not empty
 * @param faults takes what is wrong with them
 */
record TableRow(int line, Map<TableColumn, String> cells, Faults faults) {
    /** The cell of a column, if it is not empty. */
    Optional<Field> field(TableColumn column) {
        return Optional.ofNullable(cells.get(column)).map(text -> new Field(where(column), text, faults));
    }

    /** The cell of a column that must not be empty. */
    Optional<Field> required(TableColumn column, String advice) {
        Optional<Field> field = field(column);
        if (field.isEmpty()) {
            faults.add(where(column), "the cell is empty", advice);
        }
        return field;
    }

    /** The text of a cell, if it is not empty. */
    Optional<String> text(TableColumn column) {
        return field(column).map(Field::text);
    }

    private Origin where(TableColumn column) {
        return new Origin(Job.TABLE_FILE, line, column.code());
    }
}
