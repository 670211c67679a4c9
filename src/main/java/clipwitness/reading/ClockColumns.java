package clipwitness.reading;

import clipwitness.quantity.Unit;
import clipwitness.reading.file.Notes;
import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.Columns;
import clipwitness.reading.layout.DataBlock;
import clipwitness.reading.layout.Heading;
import clipwitness.reading.number.WrittenUnit;
import clipwitness.reading.time.FirstCells;
import clipwitness.reason.Argument;
import clipwitness.reason.LayoutRemark;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;

/** Finds the column that goes on where a time of day ends: {@code 16:20:00} in one column, {@code .645} or {@code 645} ms in another. */
final class ClockColumns {
    private static final Pattern WHOLE_SECONDS =
            Pattern.compile("(?:\\S*[ T])?\\d{1,2}:\\d{2}:\\d{2}(?:\\s*[aApP]\\.?[mM]\\.?)?");
    private static final Pattern FRACTION = Pattern.compile(
            "(?iu).*(?:fraction|\\bfrac|sub-? ?sec|milli|micro|nachkomma|bruchteil|décimales?|centi|\\bmsecs?\\b|\\bms\\b|\\b[uµ]s\\b).*");
    private static final Pattern DIGITS = Pattern.compile("\\d{1,12}");
    private static final Pattern SHARE = Pattern.compile("0?[.,]\\d{1,12}");

    private final DataBlock block;
    private final FirstCells cells;
    private final Notes notes;

    ClockColumns(DataBlock block, FirstCells cells, Notes notes) {
        this.block = block;
        this.cells = cells;
        this.notes = notes;
    }

    /** The columns with the fraction of the time named as such; a curve that was clocked stays a curve. */
    Columns withFraction(Columns columns, Column time) {
        boolean clock = block.unitWithin(time.place()).isPresent()
                && cells.of(time.place()).stream()
                        .allMatch(c -> WHOLE_SECONDS.matcher(c).matches());
        Optional<Column> found = columns.all().stream()
                .filter(c -> clock && !c.equals(time))
                .filter(c -> unit(c).isPresent())
                .findFirst();
        if (found.isEmpty()) {
            return columns;
        }
        Column fraction = found.get();
        Columns untimed = columns.with(time, Column.Use.LEFT_OUT).with(fraction, Column.Use.LEFT_OUT);
        if (untimed.looksLikeCurve()) {
            return untimed;
        }
        notes.evidence(LayoutRemark.CLOCK_AND_FRACTION, Argument.name(time.called()), Argument.name(fraction.called()));
        Heading heading = fraction.heading();
        return withoutSettings(columns)
                .with(
                        fraction,
                        new Column(
                                fraction.place(),
                                new Heading(heading.name(), unit(fraction), heading.role()),
                                fraction.whole(),
                                Column.Use.FRACTION));
    }

    /** Beside readings in a stated unit, numbers without one that never change are settings of the meter: its range, its digits. */
    private Columns withoutSettings(Columns columns) {
        Columns rest = columns;
        boolean stated =
                columns.values().stream().anyMatch(c -> c.heading().unit().isPresent());
        for (Column column : columns.values()) {
            boolean still = cells.of(column.place()).stream().distinct().count() == 1;
            if (stated && still && column.heading().unit().isEmpty()) {
                notes.evidence(LayoutRemark.LEFT_OUT_SETTING, Argument.name(column.called()));
                rest = rest.with(column, Column.Use.LEFT_OUT);
            }
        }
        return rest;
    }

    /** The unit in which a column holds fractions of a second; empty where it holds none. */
    private Optional<WrittenUnit> unit(Column column) {
        List<String> texts = cells.of(column.place());
        boolean shares = texts.stream().allMatch(c -> SHARE.matcher(c).matches());
        boolean digits = texts.stream().allMatch(c -> DIGITS.matcher(c).matches());
        Optional<WrittenUnit> stated = column.heading().unit();
        boolean other = stated.filter(u -> u.unit() != Unit.SECOND).isPresent();
        boolean named =
                stated.isPresent() || FRACTION.matcher(column.heading().name()).matches();
        if (other || (!shares && !digits) || (!named && !(shares && column.nameless()))) {
            return Optional.empty();
        }
        boolean prefixed = stated.filter(u -> u.exponent() != 0).isPresent();
        WrittenUnit unit = prefixed ? stated.get() : new WrittenUnit(Unit.SECOND, shares ? 0 : -longest(texts));
        return isBelowASecond(column, unit) ? Optional.of(unit) : Optional.empty();
    }

    /** Digits without a mark are those behind it, so all have the same number of them. */
    private static int longest(List<String> texts) {
        boolean alike = texts.stream().map(String::length).distinct().count() == 1;
        return alike ? texts.get(0).length() : 0;
    }

    private boolean isBelowASecond(Column column, WrittenUnit unit) {
        return DoubleStream.of(cells.numbers(column)).allMatch(v -> unit.resolve(v) < 1);
    }
}
