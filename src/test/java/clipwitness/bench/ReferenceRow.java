package clipwitness.bench;

import clipwitness.signal.ReferenceTable;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A row of a table in src/test/resources/clipwitness/bench: one header row, no quotes, no comma inside a cell.
 *
 * @param cells text by column heading without its unit, empty where a column does not apply
 */
record ReferenceRow(Map<String, String> cells) {
    /** The rows of a table. */
    static Stream<ReferenceRow> of(String file) {
        return ReferenceTable.read(ReferenceRow.class, file).stream().map(ReferenceRow::new);
    }

    /** Text of a cell. */
    String text(String heading) {
        if (!cells.containsKey(heading)) {
            throw new IllegalArgumentException("no column " + heading);
        }
        return cells.get(heading);
    }

    /** Number in a cell. */
    double number(String heading) {
        return Double.parseDouble(text(heading));
    }

    /** As a test report names it: the first three cells. */
    @Override
    public String toString() {
        return String.join(", ", cells.values().stream().limit(3).toList());
    }
}
