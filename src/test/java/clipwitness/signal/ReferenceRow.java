package clipwitness.signal;

import java.util.Map;
import java.util.stream.Stream;

/**
 * A row of a table of reference values: one header row, no quotes, no comma inside a cell.
 *
 * @param cells text by column heading without its unit, empty where a column does not apply
 */
public record ReferenceRow(Map<String, String> cells) {
    /** The rows of a table that lies in the folder of a class's package. */
    public static Stream<ReferenceRow> of(Class<?> neighbour, String file) {
        return ReferenceTable.read(neighbour, file).stream().map(ReferenceRow::new);
    }

    /** Text of a cell. */
    public String text(String heading) {
        if (!cells.containsKey(heading)) {
            throw new IllegalArgumentException("no column " + heading);
        }
        return cells.get(heading);
    }

    /** Number in a cell. */
    public double number(String heading) {
        return Double.parseDouble(text(heading));
    }

    /** As a test report names it: the first three cells. */
    @Override
    public String toString() {
        return String.join(", ", cells.values().stream().limit(3).toList());
    }
}
