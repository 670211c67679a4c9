package clipwitness.reading.layout;

import clipwitness.reading.file.Notes;
import clipwitness.reading.number.WrittenUnit;
import clipwitness.reason.Argument;
import clipwitness.reason.LayoutRemark;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What stands above the columns of numbers.
 *
 * @param headings a heading for each column of numbers, perhaps without name and unit
 * @param facts    statements made within the rows of names and units, beyond the columns
 */
public record Header(List<Heading> headings, List<Statement> facts) {
    private static final Heading NOTHING = Heading.of("");

    public Header {
        headings = List.copyOf(headings);
        facts = List.copyOf(facts);
    }

    /** The same over values in the units that the user states, one a column, in order. */
    public Header inUnits(List<WrittenUnit> stated) {
        return new Header(
                IntStream.range(0, headings.size())
                        .mapToObj(i -> headings.get(i).as(stated.get(i)))
                        .toList(),
                facts);
    }

    /** Finds the rows of names and units among the lines in front of the samples, in either order. */
    public static Header find(DataBlock block, Notes notes) {
        List<HeaderRow> rows = new ArrayList<>();
        for (int i = block.before().size() - 1; i >= 0 && rows.size() < 4; i--) {
            if (!LinesBetween.isJunk(block.before().get(i))) {
                rows.add(HeaderRow.of(block.before().get(i), block));
            }
        }
        Optional<Header> joined = rows.isEmpty() ? Optional.empty() : JoinedHeader.take(rows.get(0), block, notes);
        if (joined.isPresent()) {
            return joined.get();
        }
        Optional<HeaderRow> units = unitsRow(rows);
        Optional<HeaderRow> names = namesRow(rows, units, block);
        names.ifPresent(n -> notes.evidence(LayoutRemark.NAMES_ON, Argument.count(n.line())));
        units.ifPresent(u -> notes.evidence(LayoutRemark.UNITS_ON, Argument.count(u.line())));
        names.ifPresent(n ->
                LinesBetween.note(block, n.line(), units.map(HeaderRow::line).orElse(0), notes));
        return new Header(headings(block, names, units, notes), factsBeyond(block, names, units));
    }

    private static Optional<HeaderRow> unitsRow(List<HeaderRow> rows) {
        List<HeaderRow> two = rows.stream().limit(2).toList();
        return two.stream()
                .filter(HeaderRow::isUnits)
                .filter(r -> !r.mayBeChannels() || two.stream().anyMatch(o -> o.line() != r.line() && o.namesAll()))
                .findFirst();
    }

    private static Optional<HeaderRow> namesRow(List<HeaderRow> rows, Optional<HeaderRow> units, DataBlock block) {
        for (int i = 0; i < rows.size(); i++) {
            HeaderRow row = rows.get(i);
            boolean isUnits = units.filter(u -> u.line() == row.line()).isPresent();
            boolean besideUnits =
                    units.isPresent() && i < 2 && row.filled() >= row.over().size();
            boolean closest = i == 0 && (row.over().size() > 2 || alone(row, rows) || row.isOneName());
            boolean speaks = row.speaksOfColumns() && fits(row);
            boolean states = row.statesUnit();
            if (!isUnits && !states && row.isNames(block.dialect()) && (besideUnits || closest || speaks)) {
                return Optional.of(row);
            }
            if (!isUnits && !states && row.filled() > 1) {
                break; // statements end the header
            }
        }
        return rows.stream().filter(r -> r.isSureOfTime(block.dialect())).findFirst();
    }

    /** One or two names that might as well be a key and its value count only where no such lines stand above. */
    private static boolean alone(HeaderRow row, List<HeaderRow> rows) {
        return row.filled() == row.over().size() && rows.stream().skip(1).noneMatch(r -> r.filled() > 1);
    }

    private static boolean fits(HeaderRow row) {
        return row.filled() >= Math.min(2, row.over().size()) && (row.over().size() > 1 || row.filled() == 1);
    }

    private static List<Heading> headings(
            DataBlock block, Optional<HeaderRow> names, Optional<HeaderRow> units, Notes notes) {
        boolean letters = names.filter(n -> n.over().stream().anyMatch(c -> c.equalsIgnoreCase("i")))
                .isPresent();
        Optional<List<Optional<WrittenUnit>>> stated = StatedUnits.of(block, notes);
        List<Heading> headings = new ArrayList<>();
        for (int i = 0; i < block.columns().size(); i++) {
            int column = i;
            Optional<WrittenUnit> unit = units.flatMap(u -> unitIn(u, column)).or(() -> unitBeside(block, column));
            Heading own = names.map(n -> heading(n.over().get(column), n.over(), letters))
                    .orElse(NOTHING)
                    .orUnit(unit);
            Heading heading = stated.map(s -> own.orStated(s.get(column))).orElse(own);
            headings.add(block.unitWithin(block.columns().get(column))
                    .map(heading::inUnit)
                    .orElse(heading));
        }
        return headings;
    }

    private static Optional<WrittenUnit> unitIn(HeaderRow units, int column) {
        boolean other = units.isOtherUnit(units.over().get(column));
        return other ? Optional.of(StatedUnits.OTHER) : Ampere.unitIn(units.over(), column);
    }

    /** A cell of the row of names: a name with or without its unit, or the unit alone. */
    private static Heading heading(String cell, List<String> row, boolean letters) {
        boolean name = (letters && cell.length() == 1) || (Ampere.isDoubtful(cell) && !Ampere.isUnit(cell, row));
        Optional<WrittenUnit> alone = name ? Optional.empty() : WrittenUnit.parse(cell);
        if (alone.isEmpty()) {
            return Heading.of(cell);
        }
        String called = Character.isLetter(cell.charAt(0)) ? cell : "";
        return new Heading(called, alone, ColumnRole.of(called));
    }

    /** The unit written beside each number, in a column of text. */
    private static Optional<WrittenUnit> unitBeside(DataBlock block, int column) {
        int place = block.columns().get(column) + 1;
        String signature = block.style().signature();
        boolean text = place < signature.length() && signature.charAt(place) == Signature.TEXT;
        List<String> first = text ? block.firstRow() : List.of();
        return place < first.size() ? WrittenUnit.parse(first.get(place)) : Optional.empty();
    }

    /** Names beyond the columns with a number under them: the first time and the step, for instance. */
    private static List<Statement> factsBeyond(DataBlock block, Optional<HeaderRow> names, Optional<HeaderRow> units) {
        List<String> keys = names.map(HeaderRow::cells).orElse(List.of());
        List<String> values = units.map(HeaderRow::cells)
                .orElseGet(() -> block.dialect().split(block.rows().get(0).text()));
        int line = units.map(HeaderRow::line).orElse(block.firstLine());
        return IntStream.range(0, Math.min(keys.size(), values.size()))
                .filter(i -> !block.columns().contains(i) && !keys.get(i).isEmpty())
                .filter(i -> block.dialect().isNumber(values.get(i)))
                .mapToObj(i -> new Statement(keys.get(i), List.of(values.get(i)), line))
                .toList();
    }
}
