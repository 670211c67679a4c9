package clipwitness.reading;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.Columns;
import clipwitness.reading.layout.DataBlock;
import clipwitness.reading.time.FirstCells;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What is said of columns without time and without a stated sample interval that are no curve by their names: they may be channels, a curve, or a
 * table over something else, and nothing is guessed.
 */
final class WithoutTime {
    private static final String CURVE =
            "If they are a traced curve, write headings with units above them, or state the units, a unit for each column:"
                    + " the column unit of captures.csv or the option --unit of look, V,A";
    private static final String CHANNELS =
            "If they are channels, state their sample interval: the column interval of captures.csv or the option --interval of"
                    + " look";

    private WithoutTime() {}

    /** Refuses such columns, with the setting that settles them; leaves alone what has another message. */
    static void refuse(String file, DataBlock block, Columns columns) throws InputException {
        List<Column> all = columns.all();
        if (all.size() < 2 || columns.first(Column.Use.INDEX).isPresent()) {
            return;
        }
        FirstCells cells = new FirstCells(block);
        Column first = all.get(0);
        if (columns.nameless()) {
            throw new InputException(
                    ErrorCode.COLUMNS_UNKNOWN,
                    Origin.of(file),
                    "no heading says what its " + all.size() + " columns are" + trait(cells, first),
                    CURVE + ". " + CHANNELS);
        }
        boolean swept = cells.sweeps(first);
        if (swept
                && (first.heading().unitByName().isPresent()
                        || first.heading().unit().isPresent())) {
            throw new InputException(
                    ErrorCode.COLUMNS_UNKNOWN,
                    new Origin(file, 0, "column " + first.called()),
                    "there is no column of time: " + names(all) + " stand over " + first.called()
                            + ", and a record is over time, a curve of current and voltage",
                    "Export the samples over time. " + CHANNELS);
        }
        if (swept
                && !first.nameless()
                && first.heading().unit().isEmpty()
                && cells.of(first.place()).size() > 2) {
            throw new InputException(
                    ErrorCode.COLUMNS_UNKNOWN,
                    new Origin(file, 0, "column " + first.called()),
                    "there is no column of time: this seems to be a table over " + first.called(),
                    "If that is the time, write Time (s) or the like above it. " + CHANNELS);
        }
    }

    private static String trait(FirstCells cells, Column first) {
        return cells.repeats(first)
                ? ", and the first one rises but repeats its values, as time does that is rounded"
                : cells.sweeps(first)
                        ? ", and the first one runs on as a time, a voltage or a frequency may"
                        : ", and the first one does not run evenly as time does";
    }

    private static String names(List<Column> columns) {
        return columns.stream().skip(1).map(Column::called).collect(Collectors.joining(", "));
    }
}
