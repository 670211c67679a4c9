package clipwitness.reading.file;

/** What ends a line. A carriage return before a line feed, or two, belongs to the line end. */
public enum LineEnd {
    LINE_FEED((byte) '\n'),
    CARRIAGE_RETURN((byte) '\r');

    private final byte last;

    LineEnd(byte last) {
        this.last = last;
    }

    /** The last byte of the line end. */
    public byte last() {
        return last;
    }

    /** Line feed, unless the bytes have carriage returns only. */
    static LineEnd of(byte[] head) {
        boolean carriageReturn = false;
        for (byte b : head) {
            if (b == '\n') {
                return LINE_FEED;
            }
            carriageReturn |= b == '\r';
        }
        return carriageReturn ? CARRIAGE_RETURN : LINE_FEED;
    }
}
