package clipwitness.reading.rows;

import clipwitness.reading.number.CellReader;

/**
 * Tells whether the last number of a file without a final line end is cut: all numbers before it in its column have the same number
 * of characters from the decimal mark on, and it has fewer.
 */
final class CutEnd {
    private static final int ENOUGH_ROWS = 8;

    private int length;
    private int rows;
    private boolean uniform = true;

    /** Whether a cell holds nothing but what a number, broken off somewhere, may hold. */
    static boolean mayBeNumber(byte[] bytes, int from, int to) {
        for (int i = from; i < to; i++) {
            if ("+-.,0123456789eEdD\"\u001a".indexOf(bytes[i]) < 0) {
                return false;
            }
        }
        return true;
    }

    /** Notes the last numbers of whole rows that follow each other: the characters of each from the decimal mark on. */
    void see(int afterMark, int times) {
        uniform &= rows == 0 || length == afterMark;
        length = afterMark;
        rows += times;
    }

    /** Notes what another, on the rows that follow, has seen. */
    void see(CutEnd next) {
        if (next.rows > 0) {
            see(next.length, next.rows);
            uniform &= next.uniform;
        }
    }

    /** Whether the last number of the file is shorter than all before. */
    boolean isCut(CellReader reader) {
        return uniform && rows >= ENOUGH_ROWS && reader.afterMark() < length;
    }
}
