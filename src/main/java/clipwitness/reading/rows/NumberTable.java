package clipwitness.reading.rows;

import clipwitness.fault.InputException;
import java.util.Arrays;

/**
 * Rows of numbers, kept column by column, with room for as many rows as the file seems to have: so a long record is written into its memory
 * once, and a further row seldom needs more.
 */
public final class NumberTable {
    private static final int LEAST_ROWS = 16;

    private final String file;
    private final Room room;
    private final int mostRows;
    private final double[][] columns;
    private int rows;

    /**
     * An empty table.
     *
     * @param file     name of the file, for the message
     * @param room     memory for the rows
     * @param columns  number of columns, 1 or more
     * @param expected how many rows are to come, as far as one knows
     */
    NumberTable(String file, Room room, int columns, long expected) {
        this.file = file;
        this.room = room;
        this.mostRows = room.rows(columns);
        this.columns = new double[columns][(int) Math.min(mostRows, Math.max(LEAST_ROWS, expected))];
    }

    /**
     * Adds a row.
     *
     * @throws InputException if it has no room
     */
    void add(double[] row) throws InputException {
        requireRoom(1);
        for (int c = 0; c < columns.length; c++) {
            columns[c][rows] = row[c];
        }
        rows++;
    }

    /**
     * Puts a value into the row that {@link #add()} adds; there has to be room for it.
     */
    void put(int column, double value) {
        columns[column][rows] = value;
    }

    /** A value of the row that {@link #add()} adds. */
    double pending(int column) {
        return columns[column][rows];
    }

    /** Adds the row whose values were put. */
    void add() {
        rows++;
    }

    /**
     * Adds all rows of another table.
     *
     * @throws InputException if they have no room
     */
    void add(NumberTable other) throws InputException {
        requireRoom(other.rows);
        for (int c = 0; c < columns.length; c++) {
            System.arraycopy(other.columns[c], 0, columns[c], rows, other.rows);
        }
        rows += other.rows;
    }

    /** Takes all rows away. */
    void clear() {
        rows = 0;
    }

    /** Takes the last row away; there is one. */
    void dropLast() {
        rows--;
    }

    /** Takes all rows away but those from one up to another, counted from 0, the last excluded. */
    void keep(int from, int end) {
        for (double[] column : columns) {
            System.arraycopy(column, from, column, 0, from == 0 ? 0 : end - from);
        }
        rows = end - from;
    }

    public int rows() {
        return rows;
    }

    /** Takes a column out and lets go of it: a column can be taken once. */
    public double[] take(int column) {
        double[] values = columns[column];
        columns[column] = new double[0];
        return values.length == rows ? values : Arrays.copyOf(values, rows);
    }

    /**
     * Makes room for more rows.
     *
     * @throws InputException if there is none
     */
    void requireRoom(int more) throws InputException {
        if (more > columns[0].length - rows) {
            grow((long) rows + more);
        }
    }

    private void grow(long least) throws InputException {
        if (least > mostRows) {
            throw room.exceeded(file, columns.length);
        }
        int more = (int) Math.min(mostRows, least + least / 4);
        for (int c = 0; c < columns.length; c++) {
            columns[c] = Arrays.copyOf(columns[c], more);
        }
    }
}
