package clipwitness.report.model;

import java.util.ArrayList;
import java.util.List;

/**
 * Captures side by side, those of one setting together.
 *
 * @param title     at which settings
 * @param columns   captures
 * @param values    figures, a cell for each capture
 * @param harmonics harmonics, two cells for each capture: level and phase
 * @param notes     why figures are missing, each reason once, and which rows are left out because no capture has a figure
 * @param together  how captures of the same setting are taken together
 * @param doubts    doubts about these captures
 */
public record CaptureSheet(
        String title,
        List<Column> columns,
        List<Row> values,
        List<Row> harmonics,
        List<String> notes,
        List<String> together,
        List<ListedDoubt> doubts) {
    /** Copies what it is given. */
    public CaptureSheet {
        columns = List.copyOf(columns);
        values = List.copyOf(values);
        harmonics = List.copyOf(harmonics);
        notes = List.copyOf(notes);
        together = List.copyOf(together);
        doubts = List.copyOf(doubts);
    }

    /**
     * A capture.
     *
     * @param setting the condition in words
     * @param state   label of the state
     * @param run     which run, in words; empty where the setting was captured in one run only
     * @param row     row of the captures table, by which the list of captures names the file
     */
    public record Column(String setting, String state, String run, String row) {}

    /** Whether the captures are so few that the harmonics find room beside the figures. */
    public boolean beside() {
        return columns.size() <= 3;
    }

    /** The figures in two parts. */
    public List<List<Row>> parts() {
        return Parts.halves(values);
    }

    /** Figures and harmonics line by line, each with a row of empty cells where the others are more, in two parts. */
    public List<List<List<Row>>> lines() {
        List<List<Row>> lines = new ArrayList<>();
        for (int i = 0; i < Math.max(values.size(), harmonics.size()); i++) {
            lines.add(List.of(at(values, i, 1), at(harmonics, i, 2)));
        }
        return Parts.halves(lines);
    }

    private Row at(List<Row> rows, int index, int cells) {
        return index < rows.size()
                ? rows.get(index)
                : new Row(
                        "",
                        "",
                        columns.stream()
                                .flatMap(c -> List.of(Cell.of(""), Cell.of("")).subList(0, cells).stream())
                                .toList(),
                        "");
    }
}
