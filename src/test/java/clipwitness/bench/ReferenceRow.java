package clipwitness.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A row of a table in src/test/resources/clipwitness/bench: one header row, no quotes, no comma inside a cell.
 *
 * @param cells text by column heading, empty where a column does not apply
 */
record ReferenceRow(Map<String, String> cells) {
    /** The rows of a table. */
    static Stream<ReferenceRow> of(String file) {
        List<String> lines = lines(file);
        String[] headings = lines.get(0).split(",", -1);
        return lines.stream().skip(1).map(line -> {
            String[] cells = line.split(",", -1);
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < headings.length; i++) {
                row.put(headings[i], cells[i]);
            }
            return new ReferenceRow(row);
        });
    }

    private static List<String> lines(String file) {
        try (InputStream in = ReferenceRow.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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

    /** As a test report names it: the first two cells. */
    @Override
    public String toString() {
        return String.join(", ", cells.values().stream().limit(3).toList());
    }
}
