package clipwitness.reading.time;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.quantity.Unit;
import clipwitness.reading.file.Notes;
import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.Columns;
import clipwitness.reading.layout.DataBlock;
import clipwitness.reading.number.WrittenUnit;
import clipwitness.reason.Argument;
import clipwitness.reason.LayoutRemark;
import java.util.Locale;

/** Further columns of time, as they stand where two records are put side by side. */
public final class FurtherTimes {
    private static final double AGREES = 1e-3;
    private static final WrittenUnit SECONDS = new WrittenUnit(Unit.SECOND, 0);

    private FurtherTimes() {}

    /** Notes columns that go as the time does; refuses the file where one goes at another pace: its channels are of another record. */
    public static void check(String file, DataBlock block, Columns columns, Notes notes) throws InputException {
        Column time = columns.first(Column.Use.TIME).orElse(null);
        if (time == null) {
            return;
        }
        FirstCells cells = new FirstCells(block);
        Stamps stamps = cells.axis(time);
        for (Column other : columns.all()) {
            Stamps its = isTime(other, time) && !cells.of(other.place()).equals(cells.of(time.place()))
                    ? cells.axis(other)
                    : Stamps.NONE;
            if (!its.rises() || !its.even() || !stamps.rises()) {
                continue;
            }
            double ratio = resolved(other, its.interval()) / resolved(time, stamps.interval());
            if (Math.abs(ratio - 1) > AGREES + its.resolution() + stamps.resolution()) {
                throw new InputException(
                        ErrorCode.SEVERAL_RECORDS,
                        new Origin(file, 0, "column " + other.called()),
                        String.format(
                                Locale.ROOT,
                                "this time advances %.4g times as fast as that in column %s: two records stand side by side",
                                ratio,
                                time.called()),
                        "Export one record a file");
            }
            refuseOtherStart(file, other, its, time, stamps);
            notes.evidence(LayoutRemark.COLUMN_ADVANCES, Argument.count(other.place() + 1));
        }
    }

    /** Channels of one record may be sampled in turn, within one interval; more than that are two triggers. */
    private static void refuseOtherStart(String file, Column other, Stamps its, Column time, Stamps stamps)
            throws InputException {
        double apart = resolved(other, its.start()) - resolved(time, stamps.start());
        double rounding = resolved(other, its.quantum()) + resolved(time, stamps.quantum());
        double interval = resolved(time, stamps.interval());
        if (Math.abs(apart) > interval * (1 + AGREES) + rounding) {
            throw new InputException(
                    ErrorCode.SEVERAL_RECORDS,
                    new Origin(file, 0, "column " + other.called()),
                    String.format(
                            Locale.ROOT,
                            "this time starts %.4g intervals %s than that in column %s: two records stand side by side",
                            Math.abs(apart) / interval,
                            apart > 0 ? "later" : "earlier",
                            time.called()),
                    "Export one record a file");
        }
    }

    private static boolean isTime(Column column, Column time) {
        boolean unnamed = column.nameless() && column.place() > time.place();
        return column.use() == Column.Use.LEFT_OUT && (column.saysTime() || column.calledAs(time) || unnamed);
    }

    private static double resolved(Column column, double interval) {
        return column.heading().unit().orElse(SECONDS).resolve(interval);
    }
}
