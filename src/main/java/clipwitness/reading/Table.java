package clipwitness.reading;

import java.util.ArrayList;
import java.util.List;

/** The kept columns of a file, filled row by row in chunks, so that it grows without copying. */
final class Table {
    private static final int CHUNK = 1 << 12;
    private static final int CHUNK_CELLS = 1 << 16;
    private static final double[] TAKEN = new double[0];

    private final int width;
    private final int chunk;
    private final List<Chunk> chunks = new ArrayList<>();
    private Chunk last;
    private int rows;

    /** Some rows, column by column. */
    private static final class Chunk {
        private final double[][] columns;
        private int rows;

        Chunk(int width, int rows) {
            columns = new double[width][rows];
        }
    }

    Table(int columns) {
        this.width = columns;
        this.chunk = Math.max(1, Math.min(CHUNK, CHUNK_CELLS / columns));
        open();
    }

    /** Adds a row. */
    void add(double[] row) {
        if (last.rows == chunk) {
            open();
        }
        int at = last.rows++;
        for (int c = 0; c < width; c++) {
            last.columns[c][at] = row[c];
        }
        rows++;
    }

    /** Adds all rows of another table, which is not to be used any more. */
    void add(Table other) {
        chunks.addAll(other.chunks);
        last = other.last;
        rows += other.rows;
    }

    /** Takes the last row away; at least one has been added to this table itself. */
    void dropLast() {
        last.rows--;
        rows--;
    }

    int rows() {
        return rows;
    }

    /** Takes a column out and lets go of it: a column can be taken once. */
    double[] take(int column) {
        double[] values = new double[rows];
        int filled = 0;
        for (Chunk chunk : chunks) {
            System.arraycopy(chunk.columns[column], 0, values, filled, chunk.rows);
            chunk.columns[column] = TAKEN;
            filled += chunk.rows;
        }
        return values;
    }

    private void open() {
        last = new Chunk(width, chunk);
        chunks.add(last);
    }
}
