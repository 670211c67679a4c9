package clipwitness.reading.rows;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;

/**
 * How many rows fit the memory that the program may use. A column is held as eight bytes a row; while the columns are taken out of the table,
 * one of them is there twice.
 *
 * @param bytes memory in bytes that the rows of one file may fill
 */
public record Room(long bytes) {
    /** The rest is for measuring, and for what else there is. */
    private static final double SHARE = 0.7;

    private static final int MOST_ROWS = Integer.MAX_VALUE - 16;

    /** The room on this machine. */
    public static Room ofMachine() {
        return new Room((long) (SHARE * Runtime.getRuntime().maxMemory()));
    }

    /** Most rows of so many columns. */
    public int rows(int columns) {
        return (int) Math.min(MOST_ROWS, bytes / (Double.BYTES * (columns + 1L)));
    }

    /** What the user is told about a file with more rows. */
    public InputException exceeded(String file, int columns) {
        return new InputException(
                ErrorCode.OUT_OF_MEMORY,
                Origin.of(file),
                "the file has more rows than fit the memory: " + rows(columns) + " of " + columns
                        + (columns == 1 ? " column" : " columns") + ", where " + (bytes >> 20) + " MB are reserved",
                "Export fewer periods, or fewer channels a file; or give the program more memory, 8 GB with"
                        + " CLIPWITNESS_OPTS set to -Xmx8g");
    }
}
