package clipwitness.report.build;

import clipwitness.measure.Measured;
import clipwitness.report.model.Block;
import clipwitness.report.model.Cell;
import clipwitness.report.model.Row;
import clipwitness.report.words.AlignedNumbers;
import clipwitness.report.words.Amount;
import clipwitness.report.words.JobWording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Makes rows and columns of figures of one table. A figure that is missing is a dash with the number of the note that says why. */
final class Cells {
    private static final String NONE = "–";

    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    private final JobWording wording;
    private final List<String> reasons = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();

    Cells(JobWording wording) {
        this.wording = wording;
    }

    /** The rows that have a figure; the others are named in the notes. */
    List<Row> kept(List<Row> rows) {
        List<Row> kept = new ArrayList<>();
        for (Row row : rows) {
            if (row.cells().stream().allMatch(c -> c.text().startsWith(NONE))) {
                leftOut.add(row.name() + marks(row));
            } else {
                kept.add(row);
            }
        }
        return kept;
    }

    private static String marks(Row row) {
        return row.cells().stream()
                .map(c -> c.text().substring(NONE.length()))
                .distinct()
                .collect(Collectors.joining(" "));
    }

    /** The notes to the dashes made so far, each reason once, and what rows are left out. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (!leftOut.isEmpty()) {
            notes.add(wording.say("table.left-out", "list", String.join(", ", leftOut)));
        }
        for (int i = 0; i < reasons.size(); i++) {
            notes.add(raised(i + 1) + "\u00A0" + reasons.get(i));
        }
        return notes;
    }

    /** Rows of one kind of figure with one prefix for all. */
    Block block(List<String> names, List<List<Optional<Measured>>> figures, boolean signed) {
        List<Amount> amounts =
                wording.together(figures.stream().flatMap(List::stream).toList(), signed);
        List<Row> rows = new ArrayList<>();
        int done = 0;
        for (int i = 0; i < names.size(); i++) {
            int next = done + figures.get(i).size();
            rows.add(new Row(names.get(i), "", cells(amounts.subList(done, next)), ""));
            done = next;
        }
        return new Block(aligned(rows), unit(amounts));
    }

    /** A row of figures with one prefix for all. */
    Row row(String name, List<Optional<Measured>> figures) {
        List<Amount> amounts = wording.together(figures, false);
        return new Row(name, unit(amounts), cells(amounts), "");
    }

    /** The same, with the prefix that suits another row, too: two rows that are compared have one unit. */
    Row row(String name, List<Optional<Measured>> figures, List<Optional<Measured>> beside) {
        List<Optional<Measured>> all = new ArrayList<>(figures);
        all.addAll(beside);
        List<Amount> amounts = wording.together(all, false);
        return new Row(name, unit(amounts), cells(amounts.subList(0, figures.size())), "");
    }

    /** Changes in a row, with their signs. */
    List<Cell> changes(List<Optional<Measured>> changes) {
        return cells(wording.together(changes, true));
    }

    private static String unit(List<Amount> amounts) {
        return amounts.stream()
                .map(Amount::unit)
                .filter(u -> !u.isEmpty())
                .findFirst()
                .orElse("");
    }

    private List<Cell> cells(List<Amount> amounts) {
        return amounts.stream().map(this::cell).toList();
    }

    /** A figure as a cell. */
    Cell cell(Amount amount) {
        return amount.number().isEmpty()
                ? Cell.of(NONE + mark(wording.reason(amount.reason())))
                : new Cell(amount.number(), amount.uncertainty(), "");
    }

    private String mark(String reason) {
        if (reason.isEmpty()) {
            return "";
        }
        if (!reasons.contains(reason)) {
            reasons.add(reason);
        }
        return raised(reasons.indexOf(reason) + 1);
    }

    private static String raised(int number) {
        StringBuilder text = new StringBuilder();
        Integer.toString(number).chars().forEach(digit -> text.append(RAISED.charAt(digit - '0')));
        return text.toString();
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
        List<String> texts = AlignedNumbers.align(cells.stream().map(Cell::text).toList());
        List<String> uncertainties =
                AlignedNumbers.align(cells.stream().map(Cell::uncertainty).toList());
        List<Cell> done = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            done.add(new Cell(texts.get(i), uncertainties.get(i), cells.get(i).kind()));
        }
        return done;
    }
}
