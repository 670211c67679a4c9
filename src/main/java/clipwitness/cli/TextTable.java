package clipwitness.cli;

import java.util.List;

/** A table for a terminal: columns aligned, three spaces between them. */
final class TextTable {
    private static final String GAP = "   ";

    private TextTable() {}

    /**
     * One line a row.
     *
     * @param rows cells of each row, equally many; the first row is the heading
     */
    static String of(List<List<String>> rows) {
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < columns; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        StringBuilder table = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < columns; i++) {
                line.append(i == 0 ? "" : GAP)
                        .append(row.get(i))
                        .append(" ".repeat(widths[i] - row.get(i).length()));
            }
            table.append(line.toString().stripTrailing()).append('\n');
        }
        return table.toString();
    }
}
