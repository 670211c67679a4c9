package clipwitness.reading.time;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.Columns;
import clipwitness.reading.layout.DataBlock;
import java.util.OptionalDouble;

/** Finds a first column that counts or runs on evenly and then starts anew: segments or sweeps below one another, none of which is marked. */
public final class Restarts {
    private static final double SAME_STEP = 1e-3;
    private static final int LEAST_ROWS = 4;

    private Restarts() {}

    /**
     * Refuses such a file; what has a column of time, or is a curve, is judged elsewhere.
     *
     * @param interval sample interval in s that the file or the user states, or empty
     */
    public static void refuse(String file, DataBlock block, Columns columns, OptionalDouble interval)
            throws InputException {
        Column first = columns.all().get(0);
        refuseSegments(file, block, columns);
        boolean candidate = first.use() == Column.Use.VALUE
                && first.heading().unit().isEmpty()
                && columns.all().size() > 1;
        if (!candidate
                || columns.looksLikeCurve()
                || columns.first(Column.Use.TIME).isPresent()) {
            return;
        }
        FirstCells cells = new FirstCells(block);
        double[] values = cells.numbers(first);
        int row = restart(values);
        if (row > 0 && !isPulse(values, row, interval)) {
            throw new InputException(
                    ErrorCode.SEVERAL_RECORDS,
                    new Origin(file, block.rows().get(row).number(), "column " + first.called()),
                    "the column starts again: it goes from "
                            + cells.of(first.place()).get(row - 1) + " back to "
                            + cells.of(first.place()).get(row) + ", so records or sweeps stand below one another",
                    "Export one record a file");
        }
    }

    /** Two values by turns, another step apart than the samples: a channel that is high for one sample at a time. */
    private static boolean isPulse(double[] values, int row, OptionalDouble interval) {
        return row == 2
                && interval.isPresent()
                && Math.abs((values[1] - values[0]) / interval.getAsDouble() - 1) > SAME_STEP;
    }

    /** A column that numbers the segments, of several: no time says when each begins. */
    private static void refuseSegments(String file, DataBlock block, Columns columns) throws InputException {
        FirstCells cells = new FirstCells(block);
        for (Column column : columns.all()) {
            boolean numbers =
                    column.isSegment() && columns.first(Column.Use.TIME).isEmpty();
            if (numbers && cells.of(column.place()).stream().distinct().count() > 1) {
                throw new InputException(
                        ErrorCode.SEVERAL_RECORDS,
                        new Origin(file, 0, "column " + column.called()),
                        "segments stand below one another, each with a start of its own",
                        "Export one segment a file");
            }
        }
    }

    /** The row, from 0, on which evenly rising values start anew with the first of them; -1 where they never do, or do anything else. */
    private static int restart(double[] values) {
        double step = values.length < LEAST_ROWS ? 0 : values[1] - values[0];
        int restart = -1;
        for (int i = 1; i < values.length && step > 0; i++) {
            boolean goesOn = Math.abs((values[i] - values[i - 1]) / step - 1) < SAME_STEP;
            boolean startsAnew = values[i] == values[0];
            if (!goesOn && !startsAnew) {
                return -1;
            }
            restart = restart < 0 && startsAnew ? i : restart;
        }
        return restart;
    }
}
