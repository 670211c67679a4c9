package clipwitness.reading.layout;

import clipwitness.quantity.Unit;
import clipwitness.reading.number.WrittenUnit;
import java.util.List;
import java.util.Optional;

/**
 * All columns of numbers and what each is read as.
 *
 * @param all in the order of the file
 */
public record Columns(List<Column> all) {
    public Columns {
        all = List.copyOf(all);
    }

    /** The column read so, or empty. */
    public Optional<Column> first(Column.Use use) {
        return all.stream().filter(c -> c.use() == use).findFirst();
    }

    public List<Column> values() {
        return all.stream().filter(c -> c.use() == Column.Use.VALUE).toList();
    }

    /** What is read from the rows. */
    public List<Column> kept() {
        return all.stream().filter(c -> c.use() != Column.Use.LEFT_OUT).toList();
    }

    /**
     * What is read from the rows of a curve: voltages and currents. Where both have columns with a stated unit, those without one are
     * ranges, ratios and the like.
     */
    public List<Column> keptOfCurve() {
        boolean stated = states(Unit.VOLT) && states(Unit.AMPERE);
        return values().stream()
                .filter(c -> !stated || c.heading().unit().isPresent())
                .filter(c -> nameless()
                        || c.speaksOf(Unit.VOLT, ColumnRole.VOLTAGE)
                        || c.speaksOf(Unit.AMPERE, ColumnRole.CURRENT))
                .toList();
    }

    /** Voltage against current and no axis of time: a curve. */
    public boolean looksLikeCurve() {
        return first(Column.Use.TIME).isEmpty()
                && all.stream().anyMatch(c -> c.speaksOf(Unit.VOLT, ColumnRole.VOLTAGE))
                && all.stream().anyMatch(c -> c.speaksOf(Unit.AMPERE, ColumnRole.CURRENT));
    }

    /** Whether a name, and not its unit alone, says that a column is a voltage or a current. */
    public boolean namesCurve() {
        return values().stream()
                .map(c -> c.heading().role())
                .anyMatch(r -> r == ColumnRole.VOLTAGE || r == ColumnRole.CURRENT);
    }

    /** None of the columns has a name or a unit. */
    public boolean nameless() {
        return all.stream().allMatch(Column::nameless);
    }

    /** Whether only the values of the first column can tell what it is. */
    public boolean needsAxis() {
        return first(Column.Use.TIME).isEmpty()
                && first(Column.Use.INDEX).isEmpty()
                && all.size() > 1
                && (!looksLikeCurve()
                        || ColumnRole.isAbscissa(all.get(0).heading().name()))
                && all.get(0).heading().unit().isEmpty()
                && all.get(0).mayBeAxis();
    }

    /** The same over channels in the units that the user states, one a channel, in order. */
    public Columns inUnits(List<WrittenUnit> stated) {
        List<Column> channels = values();
        return new Columns(all.stream()
                .map(c -> channels.contains(c) ? c.in(stated.get(channels.indexOf(c))) : c)
                .toList());
    }

    /** The same with one column read otherwise. */
    public Columns with(Column column, Column.Use use) {
        return new Columns(
                all.stream().map(c -> c.equals(column) ? c.as(use) : c).toList());
    }

    /** The same with one column in the place of another. */
    public Columns with(Column column, Column other) {
        return new Columns(all.stream().map(c -> c.equals(column) ? other : c).toList());
    }

    private boolean states(Unit unit) {
        return values().stream()
                .anyMatch(c -> c.heading().unit().filter(u -> u.unit() == unit).isPresent());
    }
}
