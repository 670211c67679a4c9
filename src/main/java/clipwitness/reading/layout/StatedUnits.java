package clipwitness.reading.layout;

import clipwitness.quantity.Unit;
import clipwitness.reading.file.Line;
import clipwitness.reading.file.Notes;
import clipwitness.reading.number.WrittenUnit;
import clipwitness.reason.Argument;
import clipwitness.reason.LayoutRemark;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Units that a statement of the preamble gives cell by cell, each over or for its column: {@code Vertical Units,V,,V,} above
 * {@code TIME,CH1,CH1 Peak Detect,CH2,CH2 Peak Detect}. A unit beside volts or amperes that is neither is another one, so its column
 * holds something else.
 */
final class StatedUnits {
    /** A unit that no result is given in. */
    static final WrittenUnit OTHER = new WrittenUnit(Unit.ONE, 0);

    private static final Set<String> NONE = Set.of("-", "?", "none", "unknown", "n/a", "na", "null");

    private StatedUnits() {}

    /** For each column of numbers its unit, or empty where the statement gives it none; empty where no statement fits the columns. */
    static Optional<List<Optional<WrittenUnit>>> of(DataBlock block, Notes notes) {
        for (Line line : block.before()) {
            List<Optional<WrittenUnit>> units = units(line, block);
            if (units.stream().flatMap(Optional::stream).anyMatch(StatedUnits::isVertical)) {
                notes.evidence(LayoutRemark.UNITS_ON, Argument.count(line.number()));
                return Optional.of(units);
            }
        }
        return Optional.empty();
    }

    private static List<Optional<WrittenUnit>> units(Line line, DataBlock block) {
        HeaderRow row = HeaderRow.of(line, block);
        List<String> cells = trimmed(row.cells());
        int key = IntStream.range(0, cells.size())
                .filter(i -> !cells.get(i).isEmpty())
                .findFirst()
                .orElse(0);
        List<String> values = cells.isEmpty() ? List.of() : cells.subList(key + 1, cells.size());
        boolean placed = values.stream().filter(c -> !c.isEmpty()).count() > 1
                || (!values.isEmpty() && values.get(0).isEmpty());
        if (!row.statesUnit() || !placed || cells.get(key).matches(".*[:=].*\\S")) {
            return List.of();
        }
        List<String> over = over(cells, values, block);
        boolean any = over.stream().flatMap(c -> WrittenUnit.parse(c).stream()).anyMatch(StatedUnits::isVertical);
        return any ? over.stream().map(StatedUnits::unit).toList() : List.of();
    }

    /** The cells for the columns: as many values as columns go with them in order, fewer stand over them. */
    private static List<String> over(List<String> cells, List<String> values, DataBlock block) {
        int columns = block.columns().size();
        if (values.size() == columns) {
            return values;
        }
        List<String> over = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            int place = block.columns().get(i);
            boolean key = place < cells.size() - values.size();
            over.add(key || place >= cells.size() ? "" : cells.get(place));
        }
        return values.size() < columns ? over : List.of();
    }

    private static Optional<WrittenUnit> unit(String cell) {
        boolean none = cell.isEmpty() || NONE.contains(cell.toLowerCase(java.util.Locale.ROOT));
        return none ? Optional.empty() : WrittenUnit.parse(cell).or(() -> Optional.of(OTHER));
    }

    private static boolean isVertical(WrittenUnit unit) {
        return unit.unit() == Unit.VOLT || unit.unit() == Unit.AMPERE;
    }

    private static List<String> trimmed(List<String> cells) {
        int end = cells.size();
        while (end > 0 && cells.get(end - 1).isEmpty()) {
            end--;
        }
        return cells.subList(0, end);
    }
}
