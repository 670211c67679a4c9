package clipwitness.reading;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.Arrays;

/**
 * Reads a row whose cells are plain numbers, eight bytes at a time: an optional sign, digits with at most one decimal mark, an
 * exponent. Whatever else a row may hold is left to {@link RowScanner}, which reads the same numbers from such rows, only slower.
 * Reused from row to row, so it belongs to one thread.
 *
 * <p>Eight digits are told and summed at once by arithmetic on the bytes of one long, the first digit in the lowest byte: a digit's
 * byte less '0' is 0 to 9, and adding 0x76 to anything else sets the byte's highest bit.
 */
final class PlainRow {
    /** Bytes that have to be there after the last byte of a block; zeros, which end every number. */
    static final int SLACK = 32;

    private static final VarHandle LONGS = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
    private static final int WORD = 8;
    private static final int MOST_DIGITS = 18; // as many fit a long
    private static final long LARGEST_EXACT = 1L << 53; // whole numbers up to it are exact in a double
    private static final int LONGEST_EXPONENT = 3;
    private static final int FAILED = -1;
    private static final long[] WHOLE_POWERS = new long[WORD + 1];

    static {
        Arrays.setAll(WHOLE_POWERS, i -> Math.round(Math.pow(10, i)));
    }

    private final byte delimiter;
    private final byte mark;
    private final byte end;
    private final int[] keptBy;
    private final int time;
    private final double[] row;
    private final boolean any;

    private double value;
    private long mantissa;
    private int afterMark;
    private long timeMantissa;
    private long largestTime;

    /**
     * A reader of rows.
     *
     * @param end last byte of a line end
     * @param row where the values of the kept cells go
     */
    PlainRow(RowPlan plan, byte end, double[] row) {
        Dialect dialect = plan.dialect();
        this.any = dialect.delimiter() != Delimiter.MIXED
                && !dialect.delimiter().ends(dialect.mark())
                && plan.repeats().isEmpty();
        this.delimiter = (byte) dialect.delimiter().first();
        this.mark = (byte) dialect.mark();
        this.end = end;
        this.keptBy = plan.keptBy();
        this.time = plan.time();
        this.row = row;
    }

    /** Characters of the last number from its decimal mark on, exponent included. */
    int afterMark() {
        return afterMark;
    }

    /** Most significant digits that a time stamp was written with. */
    int timeDigits() {
        return largestTime == 0 ? 0 : Long.toString(largestTime).length();
    }

    /**
     * Reads one row.
     *
     * @param bytes with {@link #SLACK} zeros after what is filled
     * @return place after the line end, or -1 where the row is not as plain as that
     */
    int read(byte[] bytes, int from) {
        if (!any) {
            return FAILED;
        }
        int p = from;
        int last = keptBy.length - 1;
        for (int cell = 0; cell <= last; cell++) {
            while (bytes[p] == ' ') {
                p++;
            }
            p = keptBy[cell] < 0 ? skip(bytes, p) : keep(bytes, p, keptBy[cell]);
            if (p < 0 || (cell < last && bytes[p] != delimiter)) {
                return FAILED;
            }
            p += cell < last ? 1 : 0;
        }
        return lineEnd(bytes, p);
    }

    /** The row was taken: its time stamp counts. */
    void taken() {
        largestTime = Math.max(largestTime, timeMantissa);
    }

    private int keep(byte[] bytes, int at, int column) {
        int p = number(bytes, at);
        row[column] = value;
        if (column == time) {
            timeMantissa = mantissa;
        }
        return p;
    }

    private int lineEnd(byte[] bytes, int at) {
        int p = bytes[at] == delimiter ? at + 1 : at; // an empty cell at the end
        while (bytes[p] == '\r' && end != '\r') {
            p++;
        }
        return bytes[p] == end ? p + 1 : FAILED;
    }

    private int skip(byte[] bytes, int at) {
        int p = at;
        while (bytes[p] != delimiter) {
            if (bytes[p] == end || bytes[p] == '"' || bytes[p] == 0) {
                return FAILED;
            }
            p++;
        }
        return p;
    }

    /** Reads a number; the place after it, or -1. */
    private int number(byte[] bytes, int at) {
        int first = bytes[at];
        int p = first == '-' || first == '+' ? at + 1 : at;
        int start = p;
        mantissa = 0;
        p = digits(bytes, p);
        int whole = p - start;
        int fraction = 0;
        int markAt = p;
        if (bytes[p] == mark) {
            p = digits(bytes, p + 1);
            fraction = p - markAt - 1;
            if (fraction == 0) {
                return FAILED;
            }
        }
        if (whole + fraction == 0 || whole + fraction > MOST_DIGITS) {
            return FAILED;
        }
        int power = -fraction;
        if ((bytes[p] & 0x5F) >= 'D') {
            int afterLetter = p + 1;
            p = exponent(bytes, p);
            if (p < 0) {
                return FAILED;
            }
            power += exponentOf(bytes, afterLetter, p);
        }
        afterMark = fraction == 0 ? 0 : p - markAt;
        return scaled(power, first == '-') ? p : FAILED;
    }

    /** Takes up to sixteen digits into the mantissa; the place after them. */
    private int digits(byte[] bytes, int at) {
        int p = at;
        int count;
        do {
            long word = (long) LONGS.get(bytes, p) ^ 0x3030303030303030L;
            long other = ((word + 0x7676767676767676L) | word) & 0x8080808080808080L;
            count = Long.numberOfTrailingZeros(other) >>> 3;
            if (count > 0) {
                mantissa = mantissa * WHOLE_POWERS[count] + sum(word << (WORD * (WORD - count)));
            }
            p += count;
        } while (count == WORD && p - at <= MOST_DIGITS);
        return p;
    }

    /** The number whose eight digits, the first in the lowest byte, a word holds: by pairs, by fours, all. */
    private static long sum(long digits) {
        long pairs = digits * 10 + (digits >>> 8);
        long even = (pairs & 0x000000FF000000FFL) * (100 + (1_000_000L << 32));
        long odd = ((pairs >>> 16) & 0x000000FF000000FFL) * (1 + (10_000L << 32));
        return (even + odd) >>> 32;
    }

    private static int exponent(byte[] bytes, int at) {
        int letter = bytes[at] | 0x20;
        int p = at + 1;
        p += bytes[p] == '-' || bytes[p] == '+' ? 1 : 0;
        int start = p;
        while (bytes[p] >= '0' && bytes[p] <= '9') {
            p++;
        }
        boolean fits = p > start && p - start <= LONGEST_EXPONENT;
        return (letter == 'e' || letter == 'd') && fits ? p : FAILED;
    }

    private static int exponentOf(byte[] bytes, int from, int to) {
        int exponent = 0;
        for (int p = from; p < to; p++) {
            exponent = bytes[p] >= '0' ? exponent * 10 + bytes[p] - '0' : 0;
        }
        return bytes[from] == '-' ? -exponent : exponent;
    }

    /** Scales the mantissa by a power of ten, rounded once; false where that takes more than one step. */
    private boolean scaled(int power, boolean negative) {
        if (mantissa > LARGEST_EXACT || Math.abs(power) > CellReader.EXACT_POWER) {
            return false;
        }
        double magnitude = power < 0 ? mantissa / CellReader.POWERS[-power] : mantissa * CellReader.POWERS[power];
        value = negative ? -magnitude : magnitude;
        return magnitude < GapMarks.LARGEST_VALUE;
    }
}
