package clipwitness.reading.time;

import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.quantity.Unit;
import clipwitness.reading.layout.Column;
import clipwitness.reading.layout.ColumnRole;
import clipwitness.reading.layout.Columns;
import clipwitness.reading.layout.DataBlock;
import java.util.OptionalDouble;

/**
 * Segments below one another: a first column that rises evenly, starts again at its first value, and rises as before. It is the time of each
 * segment, whatever stands above it, so its values are no samples and the rows no single record.
 */
public final class Restarts {
    private static final double ALIKE = 1e-3;
    private static final int LEAST_ROWS = 3; // two values by turns may be a square wave

    private Restarts() {}

    /**
     * Refuses a file with such a column.
     *
     * @param interval sample interval in s that the file or the user states, or empty
     */
    public static void refuse(String file, DataBlock block, Columns columns, OptionalDouble interval)
            throws InputException {
        Column first = columns.all().get(0);
        if (columns.all().size() < 2 || columns.first(Column.Use.TIME).isPresent() || isSignal(first)) {
            return;
        }
        double[] values = new FirstCells(block).numbers(first).toArray();
        int rows = rowsOfSegment(values);
        if (rows > 1 && isTime(first, values, rows, interval)) {
            throw new InputException(
                    new Origin(file, 0, "column " + first.called()),
                    "it starts again every " + rows
                            + " rows: the segments (or sweeps) of a record stand below one another",
                    "Export one segment a file");
        }
    }

    private static boolean isSignal(Column column) {
        return column.heading().unit().filter(u -> u.unit() != Unit.SECOND).isPresent();
    }

    private static boolean isTime(Column column, double[] values, int rows, OptionalDouble interval) {
        ColumnRole role = column.heading().role();
        if (role == ColumnRole.TIME || role == ColumnRole.INDEX) {
            return true;
        }
        Stamps segment = Stamps.of(java.util.Arrays.copyOf(values, rows), 2);
        return interval.isPresent()
                ? agrees(segment.interval(), interval.getAsDouble())
                : rows >= LEAST_ROWS && role == ColumnRole.UNKNOWN;
    }

    private static boolean agrees(double step, double interval) {
        for (int power = 0; power <= 12; power += 3) {
            if (Math.abs(step / Math.pow(10, power) / interval - 1) < ALIKE) {
                return true;
            }
        }
        return false;
    }

    /** Rows from start to start, 0 where the values do not go so throughout. */
    private static int rowsOfSegment(double[] values) {
        int rows = 1;
        while (rows < values.length && values[rows] > values[rows - 1]) {
            rows++;
        }
        if (rows == values.length || rows < 2) {
            return 0;
        }
        double step = (values[rows - 1] - values[0]) / (rows - 1);
        for (int i = 0; i < values.length; i++) {
            double expected = values[0] + step * (i % rows);
            if (!(Math.abs(values[i] - expected) <= 0.1 * step)) { // NaN lands here too
                return 0;
            }
        }
        return rows;
    }
}
