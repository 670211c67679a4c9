package clipwitness.reading;

import java.util.Arrays;

/** The kept columns of a file, filled row by row. Grows as needed; a guess of the number of rows saves copying. */
final class Table {
    private static final int LEAST = 64;

    private final double[][] columns;
    private int rows;

    Table(int columns, int expectedRows) {
        this.columns = new double[columns][Math.max(LEAST, expectedRows)];
    }

    /** Adds a row. */
    void add(double[] row) {
        if (rows == columns[0].length) {
            grow();
        }
        for (int c = 0; c < columns.length; c++) {
            columns[c][rows] = row[c];
        }
        rows++;
    }

    /** Takes the last row away. */
    void dropLast() {
        rows--;
    }

    int rows() {
        return rows;
    }

    /** Takes a column out, at its length, and lets go of it: a column can be taken once. */
    double[] take(int column) {
        double[] values = columns[column];
        columns[column] = new double[0];
        return values.length == rows ? values : Arrays.copyOf(values, rows);
    }

    private void grow() {
        int longer = (int) Math.min(Integer.MAX_VALUE - 8L, rows + (rows >> 1) + LEAST);
        for (int c = 0; c < columns.length; c++) {
            columns[c] = Arrays.copyOf(columns[c], longer);
        }
    }
}
