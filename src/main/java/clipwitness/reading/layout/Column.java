package clipwitness.reading.layout;

import clipwitness.quantity.Unit;
import clipwitness.reading.number.WrittenUnit;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A column of numbers.
 *
 * @param place   place of its cells in a row, from 0
 * @param heading what stands above it
 * @param whole   whether its first numbers are written without decimal mark and exponent
 * @param use     what it is read as
 */
public record Column(int place, Heading heading, boolean whole, Use use) {
    private static final Pattern CHANNEL =
            Pattern.compile("(?i)(?:ch|chan|channel|kanal|canal|canale|voie|probe)[ ._-]?(?:\\d{1,2}|[A-D])");

    /** What a column is read as. */
    public enum Use {
        TIME,
        /** Fraction of the second that a column of times of day leaves off. */
        FRACTION,
        INDEX,
        VALUE,
        LEFT_OUT
    }

    /** For messages: the name, or the number of the column in the file. */
    public String called() {
        return heading.name().isEmpty() ? String.valueOf(place + 1) : heading.name();
    }

    /** Holds values in this unit, or values whose unit is unstated but whose name says as much. */
    boolean speaksOf(Unit unit, ColumnRole role) {
        return use == Use.VALUE && heading.unit().map(u -> u.unit() == unit).orElse(heading.role() == role);
    }

    /** By its unit or its name it holds frequencies. */
    public boolean isFrequency() {
        return heading.unit().map(u -> u.unit() == Unit.HERTZ).orElse(heading.role() == ColumnRole.FREQUENCY);
    }

    /** Whether it numbers the segments that the rows belong to. */
    public boolean isSegment() {
        return heading.role() == ColumnRole.SEGMENT && whole;
    }

    /** Whether its heading says that it holds times. */
    public boolean saysTime() {
        return heading.role() == ColumnRole.TIME
                || heading.unit().filter(u -> u.unit() == Unit.SECOND).isPresent();
    }

    /** Whether two columns are called alike but for a number: {@code t1} and {@code t2}. */
    public boolean calledAs(Column other) {
        String stem = stem();
        return !stem.isEmpty() && stem.equals(other.stem());
    }

    private String stem() {
        return heading.name().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]", "");
    }

    /** Whether its name is that of a channel and nothing else, {@code CH1}: then it is no time, however evenly it rises. */
    public boolean isNamedAsChannel() {
        return CHANNEL.matcher(heading.name()).matches();
    }

    /** Neither name nor unit stands above it. */
    public boolean nameless() {
        return heading.name().isEmpty() && heading.unit().isEmpty();
    }

    /** Whether it may be time or an index without saying so: its name is of no quantity that it would then not be. */
    boolean mayBeAxis() {
        ColumnRole role = heading.role();
        return role == ColumnRole.UNKNOWN || role == ColumnRole.TIME || role == ColumnRole.INDEX;
    }

    /** The same column in the unit that the user states. */
    Column in(WrittenUnit stated) {
        return new Column(place, heading.as(stated), whole, use);
    }

    public Column as(Use other) {
        return new Column(place, heading, whole, other);
    }
}
