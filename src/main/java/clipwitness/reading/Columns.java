package clipwitness.reading;

import clipwitness.capture.DoubtCode;
import clipwitness.capture.Severity;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All columns of numbers and what each is read as.
 *
 * @param all in the order of the file
 */
record Columns(List<Column> all) {
    private static final int ROWS_LOOKED_AT = 300;

    Columns {
        all = List.copyOf(all);
    }

    /** Tells time, index and values apart by heading and unit; without a heading, by how the first column goes on. */
    static Columns of(DataBlock block, Header header, Optional<Sampling> sampling, Notes notes) {
        List<Column> columns = new ArrayList<>();
        boolean axis = false;
        for (int i = 0; i < block.columns().size(); i++) {
            Column column = new Column(block.columns().get(i), header.headings().get(i), Column.Use.VALUE);
            Column.Use use = use(column, block, axis);
            axis |= use == Column.Use.TIME;
            columns.add(column.as(use));
        }
        Columns found = new Columns(columns);
        return found.needsAxis() ? found.withAxisFromValues(block, sampling, notes) : found;
    }

    /** The column read so, or empty. */
    Optional<Column> first(Column.Use use) {
        return all.stream().filter(c -> c.use() == use).findFirst();
    }

    List<Column> values() {
        return all.stream().filter(c -> c.use() == Column.Use.VALUE).toList();
    }

    /** What is read from the rows; of a curve with stated units the columns without one are of no use. */
    List<Column> kept(boolean curve) {
        boolean stated = Stream.of(Unit.VOLT, Unit.AMPERE)
                .allMatch(u -> values().stream()
                        .anyMatch(c -> c.speaksOf(u, Role.UNKNOWN)
                                && c.heading().unit().isPresent()));
        return all.stream()
                .filter(c -> c.use() != Column.Use.LEFT_OUT)
                .filter(c -> !curve || c.use() == Column.Use.VALUE)
                .filter(c -> !curve || !stated || c.heading().unit().isPresent())
                .filter(c -> !curve
                        || nameless()
                        || c.speaksOf(Unit.VOLT, Role.VOLTAGE)
                        || c.speaksOf(Unit.AMPERE, Role.CURRENT))
                .toList();
    }

    /** Voltage against current and no axis of time: a curve. */
    boolean looksLikeCurve() {
        return first(Column.Use.TIME).isEmpty()
                && all.stream().anyMatch(c -> c.speaksOf(Unit.VOLT, Role.VOLTAGE))
                && all.stream().anyMatch(c -> c.speaksOf(Unit.AMPERE, Role.CURRENT));
    }

    /** None of the columns has a name or a unit. */
    boolean nameless() {
        return all.stream()
                .allMatch(
                        c -> c.heading().name().isEmpty() && c.heading().unit().isEmpty());
    }

    private boolean needsAxis() {
        return first(Column.Use.TIME).isEmpty()
                && first(Column.Use.INDEX).isEmpty()
                && all.size() > 1
                && !looksLikeCurve()
                && all.get(0).heading().unit().isEmpty();
    }

    private static Column.Use use(Column column, DataBlock block, boolean axisKnown) {
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
            return !axisKnown && (named || axis(block, column).rises()) ? Column.Use.TIME : Column.Use.LEFT_OUT;
        }
        return heading.role() == Role.INDEX && counts(axis(block, column)) ? Column.Use.INDEX : Column.Use.VALUE;
    }

    private Columns withAxisFromValues(DataBlock block, Optional<Sampling> sampling, Notes notes) {
        Stamps first = axis(block, all.get(0));
        boolean index = counts(first) && (sampling.isPresent() || first.interval() == 1);
        boolean agrees =
                sampling.filter(s -> TimeUnit.fitting(first, s).isPresent()).isPresent();
        if (!(first.interval() > 0) || !first.even() || (sampling.isPresent() && !index && !agrees)) {
            return this;
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
        List<Column> changed = new ArrayList<>(all);
        changed.set(0, all.get(0).as(index ? Column.Use.INDEX : Column.Use.TIME));
        return new Columns(changed);
    }

    /** How a column goes on over the first rows; a gap or a step back leaves no line. */
    private static Stamps axis(DataBlock block, Column column) {
        List<String> cells = block.firstCells(column.place(), ROWS_LOOKED_AT);
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

    /** Whole numbers that rise by a whole step. */
    private static boolean counts(Stamps axis) {
        double step = Math.rint(axis.interval());
        return step >= 1 && axis.worst() < 1e-6 && Math.abs(axis.start() - Math.rint(axis.start())) < 1e-6;
    }
}
