package clipwitness.reading;

import clipwitness.quantity.Unit;
import clipwitness.reading.file.Notes;
import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.ColumnRole;
import clipwitness.reading.layout.Columns;
import clipwitness.reading.layout.DataBlock;
import clipwitness.reading.layout.Header;
import clipwitness.reading.layout.Heading;
import clipwitness.reading.number.WrittenUnit;
import clipwitness.reading.time.FirstCells;
import clipwitness.reading.time.Sampling;
import clipwitness.reading.time.Stamps;
import clipwitness.reading.time.TimeUnit;
import clipwitness.reason.Argument;
import clipwitness.reason.DoubtReason;
import clipwitness.reason.LayoutRemark;
import clipwitness.reason.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Tells time, index and values apart: by heading and unit, and without a heading by how the first column goes on. */
final class ColumnUses {
    /**
     * Longest interval in s that a column without a name is taken for. No wave of the audio range is sampled more slowly, while
     * swept voltages and frequencies, and times in ms or µs, go in wider steps.
     */
    private static final double SLOWEST = 1e-3;

    /** A name of a logarithm, whose values are no volts or amperes whatever unit stands beside it. */
    private static final Pattern LOGARITHM = Pattern.compile("(?iu)(?<!\\p{L})(?:log|ln|lg)(?:10)?(?!\\p{L})");

    private final DataBlock block;
    private final FirstCells cells;
    private final Header header;
    private final Optional<Sampling> sampling;
    private final OptionalDouble given;
    private final Notes notes;

    /**
     * A decision about the columns of one file.
     *
     * @param given the sample interval that the user states, s
     */
    ColumnUses(DataBlock block, Header header, Optional<Sampling> sampling, OptionalDouble given, Notes notes) {
        this.block = block;
        this.cells = new FirstCells(block);
        this.header = header;
        this.sampling = sampling;
        this.given = given;
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
        noteOtherUnits(found);
        Columns withAxis = found.needsAxis() ? firstAsAxis(found) : found;
        Columns alone = withAxis.first(Column.Use.TIME)
                .map(t -> new ClockColumns(block, cells, notes)
                        .withFraction(new BesideTime(cells, notes).leaveOut(withAxis, t), t))
                .orElse(withAxis);
        return EnvelopeColumns.leaveOut(alone, notes);
    }

    private Column.Use byHeading(Column column, boolean axisKnown) {
        Heading heading = column.heading();
        Optional<Unit> unit = heading.unit().map(WrittenUnit::unit);
        if (unit.filter(u -> u == Unit.VOLT || u == Unit.AMPERE).isPresent()) {
            boolean logarithm = LOGARITHM.matcher(heading.name()).find();
            return logarithm ? Column.Use.LEFT_OUT : Column.Use.VALUE;
        }
        boolean seconds = unit.filter(u -> u == Unit.SECOND).isPresent();
        if (unit.isPresent() && !seconds) {
            return Column.Use.LEFT_OUT;
        }
        if (seconds || heading.role() == ColumnRole.TIME) {
            boolean named = heading.name().isEmpty() || heading.role() == ColumnRole.TIME;
            return !axisKnown && (named || cells.axis(column).rises()) ? Column.Use.TIME : Column.Use.LEFT_OUT;
        }
        if (heading.role() == ColumnRole.SEGMENT && column.whole()) {
            return Column.Use.LEFT_OUT;
        }
        boolean first = column.place() == block.columns().get(0);
        boolean number = heading.role() == ColumnRole.INDEX
                || (first
                        && heading.name().equalsIgnoreCase("id")
                        && cells.axis(column).interval() == 1);
        return number && cells.axis(column).counts() ? Column.Use.INDEX : Column.Use.VALUE;
    }

    private void noteOtherUnits(Columns columns) {
        String others = columns.all().stream()
                .filter(c -> c.use() == Column.Use.LEFT_OUT)
                .filter(c ->
                        c.heading().unit().filter(u -> u.unit() != Unit.SECOND).isPresent())
                .map(Column::called)
                .collect(Collectors.joining(", "));
        if (!others.isEmpty()) {
            notes.evidence(LayoutRemark.LEFT_OUT_UNITS, Argument.name(others));
        }
    }

    private boolean isWhole(int place) {
        return cells.of(place).stream()
                .allMatch(c -> c.chars().allMatch(d -> Character.isDigit(d) || "+-* ".indexOf(d) >= 0));
    }

    /** The first column as an axis, if its values rise evenly. */
    private Columns firstAsAxis(Columns columns) {
        Column first = columns.all().get(0);
        Stamps axis = cells.axis(first);
        boolean index = axis.counts() && (sampling.isPresent() || axis.interval() == 1);
        boolean agrees = sampling.filter(
                        s -> TimeUnit.fitting(axis, s.interval()).isPresent())
                .isPresent();
        if (first.isNamedAsChannel() && !agrees) {
            return columns;
        }
        boolean anything = first.nameless() ? !(axis.interval() < SLOWEST) : axis.counts();
        boolean unknown = sampling.isPresent() ? !agrees : anything && given.isEmpty();
        if (!axis.rises() || !axis.even() || (!index && unknown)) {
            return isRoundedTime(first) ? columns.with(first, Column.Use.TIME) : columns;
        }
        if (agrees) {
            notes.evidence(LayoutRemark.FIRST_COLUMN_AGREES);
        } else if (!index) {
            notes.evidence(LayoutRemark.FIRST_COLUMN_EVEN);
            noteUnnamed(first);
        }
        return columns.with(first, agrees || !index ? Column.Use.TIME : Column.Use.INDEX);
    }

    /** Whether the column rises by the interval that user or preamble state, so far as its rounded values show. */
    private boolean isRoundedTime(Column first) {
        Stamps rounded = cells.rounded(first);
        OptionalDouble interval = given.isPresent() || sampling.isEmpty()
                ? given
                : OptionalDouble.of(sampling.get().interval());
        return interval.isPresent()
                && rounded.rises()
                && rounded.even()
                && TimeUnit.fitting(rounded, interval.getAsDouble()).isPresent();
    }

    private void noteUnnamed(Column first) {
        if (given.isEmpty() && first.heading().name().isEmpty()) {
            notes.doubt(Severity.WARNING, DoubtReason.UNIT_ASSUMED_FIRST_COLUMN);
        } else if (given.isEmpty()) {
            notes.doubt(Severity.WARNING, DoubtReason.UNIT_ASSUMED_CALLED, Argument.name(first.called()));
        }
    }
}
