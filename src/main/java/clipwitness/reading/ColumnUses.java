package clipwitness.reading;

import clipwitness.capture.DoubtCode;
import clipwitness.capture.Severity;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells time, index and values apart: by heading and unit, and without a heading by how the first column goes on. */
final class ColumnUses {
    private final DataBlock block;
    private final List<List<String>> firstRows;
    private final Header header;
    private final Optional<Sampling> sampling;
    private final Notes notes;

    ColumnUses(DataBlock block, Header header, Optional<Sampling> sampling, Notes notes) {
        this.block = block;
        this.firstRows = block.firstRows();
        this.header = header;
        this.sampling = sampling;
        this.notes = notes;
    }

    /** What each column is read as. */
    Columns decide() {
        List<Column> columns = new ArrayList<>();
        boolean axis = false;
        for (int i = 0; i < block.columns().size(); i++) {
            int place = block.columns().get(i);
            Column column = new Column(place, header.headings().get(i), isWhole(place), Column.Use.VALUE);
            Column.Use use = byHeading(column, axis);
            axis |= use == Column.Use.TIME;
            columns.add(column.as(use));
        }
        Columns found = new Columns(columns);
        Columns withAxis = found.needsAxis() ? firstAsAxis(found) : found;
        return withAxis.first(Column.Use.TIME).map(t -> besideTime(withAxis, t)).orElse(withAxis);
    }

    private Column.Use byHeading(Column column, boolean axisKnown) {
        Heading heading = column.heading();
        Optional<Unit> unit = heading.unit().map(UnitText::unit);
        if (unit.filter(u -> u == Unit.VOLT || u == Unit.AMPERE).isPresent()) {
            return Column.Use.VALUE;
        }
        boolean seconds = unit.filter(u -> u == Unit.SECOND).isPresent();
        if (unit.isPresent() && !seconds) {
            return Column.Use.LEFT_OUT;
        }
        if (seconds || heading.role() == Role.TIME) {
            boolean named = heading.name().isEmpty() || heading.role() == Role.TIME;
            return !axisKnown && (named || axis(column).rises()) ? Column.Use.TIME : Column.Use.LEFT_OUT;
        }
        return heading.role() == Role.INDEX && axis(column).counts() ? Column.Use.INDEX : Column.Use.VALUE;
    }

    private boolean isWhole(int place) {
        return firstCells(place).stream()
                .allMatch(c -> c.chars().allMatch(d -> Character.isDigit(d) || "+-* ".indexOf(d) >= 0));
    }

    /** The first column as an axis, if its values rise evenly. */
    private Columns firstAsAxis(Columns columns) {
        Column first = columns.all().get(0);
        Stamps axis = axis(first);
        boolean index = axis.counts() && (sampling.isPresent() || axis.interval() == 1);
        boolean agrees =
                sampling.filter(s -> TimeUnit.fitting(axis, s).isPresent()).isPresent();
        if (!axis.rises() || !axis.even() || (sampling.isPresent() && !index && !agrees)) {
            return columns;
        }
        if (agrees) {
            notes.evidence("first column read as time: it rises by the interval that the preamble states");
        } else if (!index) {
            notes.evidence("first column read as time: it rises evenly, and no heading says what it is");
            notes.doubt(
                    DoubtCode.UNIT_ASSUMED,
                    Severity.WARNING,
                    "The file does not name its first column; it rises evenly and is taken as time in seconds. "
                            + "The column interval of captures.csv, or the option --interval of look, settles it.");
        }
        return columns.with(first, agrees || !index ? Column.Use.TIME : Column.Use.INDEX);
    }

    /** Beside a column of time an index is of no use, and neither is the same time once more. */
    private Columns besideTime(Columns columns, Column time) {
        Columns rest = columns;
        List<String> stamps = firstCells(time.place());
        for (Column column : columns.all()) {
            boolean again = column.use() == Column.Use.VALUE
                    && column.heading().unit().isEmpty()
                    && firstCells(column.place()).equals(stamps);
            boolean count = column.use() == Column.Use.INDEX
                    || (column.nameless()
                            && column.place() < time.place()
                            && axis(column).counts());
            if (again) {
                notes.evidence("column " + (column.place() + 1) + " left out: it repeats the time");
            }
            rest = again || count ? rest.with(column, Column.Use.LEFT_OUT) : rest;
        }
        return rest;
    }

    /** How a column goes on over the first rows; a gap or a step back leaves no line. */
    private Stamps axis(Column column) {
        List<String> cells = firstCells(column.place());
        double[] values = cells.stream().mapToDouble(block.dialect()::number).toArray();
        int digits = cells.stream()
                .mapToInt(c -> (int) c.chars().filter(Character::isDigit).count())
                .max()
                .orElse(1);
        for (int i = 1; i < values.length; i++) {
            if (!(values[i] >= values[i - 1])) {
                return Stamps.NONE;
            }
        }
        return values.length < 2 ? Stamps.NONE : Stamps.of(values, digits);
    }

    /** A column's texts in the first rows, empty where a row is shorter. */
    private List<String> firstCells(int place) {
        return firstRows.stream().map(r -> place < r.size() ? r.get(place) : "").toList();
    }
}
