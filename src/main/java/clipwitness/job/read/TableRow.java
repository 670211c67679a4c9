package clipwitness.job.read;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.Origin;
import clipwitness.job.CaptureKind;
import clipwitness.job.Job;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A row of the captures table, cells by column.
 *
 * @param line   1-based line on which the row begins
 * @param columns columns that the table has
 * @param cells  cells that are not empty
 * @param faults takes what is wrong with them
 */
record TableRow(int line, Set<TableColumn> columns, Map<TableColumn, String> cells, Faults faults) {
    /** The cell of a column, if it is not empty. */
    Optional<Field> field(TableColumn column) {
        return Optional.ofNullable(cells.get(column)).map(text -> new Field(where(column), text, faults));
    }

    /** The cell of a column that must not be empty; a column that is missing altogether is a fault of the header row. */
    Optional<Field> required(TableColumn column, String advice) {
        Optional<Field> field = field(column);
        if (field.isEmpty() && columns.contains(column)) {
            faults.add(ErrorCode.MISSING_KEY, where(column), "the cell is empty", advice);
        }
        return field;
    }

    /** The same row with an empty cell in a column. */
    TableRow without(TableColumn column) {
        Map<TableColumn, String> others = new EnumMap<>(TableColumn.class);
        others.putAll(cells);
        others.remove(column);
        return new TableRow(line, columns, others, faults);
    }

    /** The text of a cell, if it is not empty. */
    Optional<String> text(TableColumn column) {
        return field(column).map(Field::text);
    }

    /** Whether the row is that of a traced junction. */
    boolean isJunction() {
        return text(TableColumn.KIND)
                .filter(CaptureKind.JUNCTION.code()::equalsIgnoreCase)
                .isPresent();
    }

    private Origin where(TableColumn column) {
        return new Origin(Job.TABLE_FILE, line, column.code());
    }
}
