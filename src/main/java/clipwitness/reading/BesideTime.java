package clipwitness.reading;

import clipwitness.reading.file.Notes;
import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.Columns;
import clipwitness.reading.time.FirstCells;
import clipwitness.reading.time.Stamps;
import clipwitness.reason.Argument;
import clipwitness.reason.LayoutRemark;
import java.util.List;

/** Leaves out what stands beside a column of time and is no channel over it: an index, the same time again, another record's time, a spectrum. */
final class BesideTime {
    private final FirstCells cells;
    private final Notes notes;

    BesideTime(FirstCells cells, Notes notes) {
        this.cells = cells;
        this.notes = notes;
    }

    /** The columns, with what is no channel left out. */
    Columns leaveOut(Columns columns, Column time) {
        Columns rest = columns;
        boolean spectrum = false;
        for (Column column : columns.all()) {
            boolean value = column.use() == Column.Use.VALUE;
            boolean again = value && repeats(column, time);
            boolean further = value && isFurtherTime(columns, column, time);
            spectrum = (spectrum || isAxisOfSpectrum(column)) && !further && !column.saysTime();
            if (again) {
                notes.evidence(LayoutRemark.COLUMN_REPEATS, Argument.count(column.place() + 1));
            }
            if (spectrum && value) {
                notes.evidence(LayoutRemark.COLUMN_OF_SPECTRUM, Argument.name(column.called()));
            }
            boolean none = again || further || isCount(column, time) || (spectrum && value);
            rest = none ? rest.with(column, Column.Use.LEFT_OUT) : rest;
        }
        return rest;
    }

    private boolean repeats(Column column, Column time) {
        List<String> stamps = cells.of(time.place());
        return column.heading().unit().isEmpty() && cells.of(column.place()).equals(stamps);
    }

    private boolean isCount(Column column, Column time) {
        boolean unnamed = column.nameless() && column.place() < time.place();
        return column.use() == Column.Use.INDEX
                || (unnamed && cells.axis(column).counts());
    }

    /** Frequencies that rise evenly: what stands right of them is over frequency; a counter's readings go up and down. */
    private boolean isAxisOfSpectrum(Column column) {
        return column.isFrequency() && rises(column);
    }

    /** A column called as the time is, or one without a name in front of another that rises evenly: a second record's time. */
    private boolean isFurtherTime(Columns columns, Column column, Column time) {
        boolean before = columns.values().stream().anyMatch(c -> c.place() > column.place());
        boolean behind =
                columns.values().stream().anyMatch(c -> c.place() > time.place() && c.place() < column.place());
        boolean unnamed = column.nameless() && behind && before;
        return column.heading().unit().isEmpty() && (unnamed || column.calledAs(time)) && rises(column);
    }

    private boolean rises(Column column) {
        Stamps axis = cells.axis(column);
        return axis.rises() && axis.even() && axis.repeats() == 0;
    }
}
