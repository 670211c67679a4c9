package clipwitness.signal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A fixture of reference values: comma-separated, one header row, no quoted cells. */
public final class ReferenceTable {
    private ReferenceTable() {}

    /** Rows by column name, the unit in brackets dropped; of columns that differ in their unit alone, the first counts. */
    public static List<Map<String, String>> read(Class<?> neighbour, String name) {
        try (BufferedReader reader = new BufferedReader(
                new InputStreamReader(neighbour.getResourceAsStream(name), StandardCharsets.UTF_8))) {
            String[] header = reader.readLine().split(",", -1);
            return reader.lines().map(line -> row(header, line.split(",", -1))).collect(Collectors.toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, String> row(String[] header, String[] cells) {
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < header.length; i++) {
            row.putIfAbsent(header[i].replaceAll(" \\([^)]*\\)$", ""), cells[i]);
        }
        return row;
    }
}
