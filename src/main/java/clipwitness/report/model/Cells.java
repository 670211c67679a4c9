package clipwitness.report.model;

import clipwitness.measure.Measured;
import clipwitness.report.words.Amount;
import clipwitness.report.words.Column;
import clipwitness.report.words.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes rows and columns of figures. */
final class Cells {
    private static final String NONE = "–";

    private final Wording wording;

    Cells(Wording wording) {
        this.wording = wording;
    }

    /** A row of figures in one common scale; a figure that is missing is a dash. */
    Row row(String name, List<Optional<Measured>> figures) {
        List<Measured> there = figures.stream().flatMap(Optional::stream).toList();
        if (there.isEmpty()) {
            return new Row(name, "", figures.stream().map(f -> Cell.of(NONE)).toList(), "");
        }
        String[] unit = {""};
        List<Cell> cells = new ArrayList<>();
        for (Amount amount : wording.together(figures)) {
            cells.add(cell(amount));
            unit[0] = amount.unit().isEmpty() ? unit[0] : amount.unit();
        }
        return new Row(name, unit[0], cells, "");
    }

    /** A figure as a cell. */
    Cell cell(Amount amount) {
        return amount.number().isEmpty() ? Cell.of(NONE) : new Cell(amount.number(), amount.uncertainty(), "");
    }

    /** Rows whose decimal marks stand under one another, column by column. */
    List<Row> aligned(List<Row> rows) {
        if (rows.isEmpty()) {
            return rows;
        }
        List<List<Cell>> columns = new ArrayList<>();
        for (int i = 0; i < rows.get(0).cells().size(); i++) {
            columns.add(aligned(rows, i));
        }
        List<Row> done = new ArrayList<>();
        for (int r = 0; r < rows.size(); r++) {
            int row = r;
            Row old = rows.get(r);
            done.add(new Row(
                    old.name(),
                    old.unit(),
                    columns.stream().map(c -> c.get(row)).toList(),
                    old.note()));
        }
        return done;
    }

    private List<Cell> aligned(List<Row> rows, int column) {
        List<Cell> cells = rows.stream().map(r -> r.cells().get(column)).toList();
        String mark = wording.say("decimal.mark");
        List<String> texts = Column.align(cells.stream().map(Cell::text).toList(), mark);
        List<String> uncertainties =
                Column.align(cells.stream().map(Cell::uncertainty).toList(), mark);
        List<Cell> done = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            done.add(new Cell(texts.get(i), uncertainties.get(i), cells.get(i).kind()));
        }
        return done;
    }
}
