package clipwitness.reading.layout;

import clipwitness.reading.file.Notes;
import clipwitness.reading.number.WrittenUnit;
import clipwitness.reason.Argument;
import clipwitness.reason.LayoutRemark;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Names and units of the columns in one row because the line end between them is lost: {@code t,A,B (ms),(V),(V)}. */
final class JoinedHeader {
    private JoinedHeader() {}

    static Optional<Header> take(HeaderRow row, DataBlock block, Notes notes) {
        int columns = block.columns().size();
        List<String> cells = row.cells();
        if (columns < 2 || cells.size() != 2 * columns - 1 || !unitsFrom(cells, columns)) {
            return Optional.empty();
        }
        Heading joint = Heading.of(cells.get(columns - 1));
        if (joint.unit().isEmpty()) {
            return Optional.empty();
        }
        List<Heading> headings = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            String name = i < columns - 1 ? cells.get(i) : joint.name();
            Optional<WrittenUnit> unit = i == 0 ? joint.unit() : WrittenUnit.parse(cells.get(columns - 1 + i));
            headings.add(new Heading(name, unit, ColumnRole.of(name)));
        }
        notes.evidence(LayoutRemark.JOINED_HEADER, Argument.count(row.line()), Argument.count(columns));
        return Optional.of(new Header(headings, List.of()));
    }

    private static boolean unitsFrom(List<String> cells, int first) {
        return cells.stream().skip(first).allMatch(HeaderRow::isUnit);
    }
}
