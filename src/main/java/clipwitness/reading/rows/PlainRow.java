package clipwitness.reading.rows;

import clipwitness.reading.layout.Dialect;
import clipwitness.reading.number.CellReader;
import clipwitness.reading.number.Delimiter;
import clipwitness.reading.number.GapMarks;
import java.util.Arrays;
import java.util.List;

/**
 * Reads a row whose cells are plain numbers, eight bytes at a time: an optional sign, digits with at most one decimal mark, an
 * exponent. Whatever else a row may hold is left to {@link RowScanner}, which reads the same numbers from such rows, only slower.
 * Reused from row to row, so it belongs to one thread.
 */
final class PlainRow {
    /** Bytes that have to be there after the last byte of a block; zeros, which end every number. */
    static final int SLACK = 32;

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
    private boolean any;
    private double value;
    private long mantissa;
    private long timeMantissa;
    private int afterMark;
    private int exponent;
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
                && !plan.annotated();
        this.delimiter = (byte) dialect.delimiter().first();
        this.mark = (byte) dialect.mark();
        this.end = end;
        this.keptBy = plan.keptBy();
        this.time = plan.time();
        this.row = row;
    }

    /** Lines that are no rows: where one of them could be read as a plain row, none is read as such. */
    void except(List<byte[]> lines) {
        for (byte[] line : lines) {
            byte[] row = Arrays.copyOf(line, line.length + 1 + SLACK);
            row[line.length] = end;
            any &= read(row, 0) < 0;
        }
    }

    /** Characters of the last number from its decimal mark on, exponent included. */
    int afterMark() {
        return afterMark;
    }

    /** The digits of a time stamp as a whole number, the largest of all rows taken. */
    long largestTime() {
        return largestTime;
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
        int sign = bytes[at] == '-' || bytes[at] == '+' ? bytes[at] : 0;
        int start = sign == 0 ? at : at + 1;
        mantissa = 0;
        int p = digits(bytes, start);
        int whole = p - start;
        int fraction = 0;
        if (bytes[p] == mark) {
            int markAt = p;
            p = digits(bytes, p + 1);
            fraction = p - markAt - 1;
            if (fraction == 0) {
                return FAILED;
            }
        }
        if (whole + fraction == 0 || whole + fraction > MOST_DIGITS) {
            return FAILED;
        }
        return scaled(bytes, p, fraction, sign == '-' ? -1 : 1);
    }

    /** Scales the mantissa by its decimals and by the exponent that may follow it, rounded once; the place after it, or -1. */
    private int scaled(byte[] bytes, int afterDigits, int fraction, int sign) {
        int p = afterDigits;
        int power = -fraction;
        if ((bytes[p] & 0x5F) >= 'D') {
            p = exponent(bytes, p);
            power += exponent;
        }
        afterMark = fraction == 0 ? 0 : p - afterDigits + fraction + 1;
        if (p < 0 || mantissa > LARGEST_EXACT || Math.abs(power) > CellReader.EXACT_POWER) {
            return FAILED;
        }
        double magnitude = CellReader.scaled((double) mantissa, power);
        value = sign * magnitude;
        return magnitude < GapMarks.LARGEST_VALUE ? p : FAILED;
    }

    /** Takes digits into the mantissa, as many as it holds and a few more; the place after them. */
    private int digits(byte[] bytes, int at) {
        int p = at;
        int count;
        do {
            long values = Swar.word(bytes, p) ^ Swar.ZEROS;
            count = Long.numberOfTrailingZeros(Swar.others(values)) >>> 3;
            if (count > 0) {
                mantissa = mantissa * WHOLE_POWERS[count] + Swar.sum(values << (WORD * (WORD - count)));
            }
            p += count;
        } while (count == WORD && p - at <= MOST_DIGITS);
        return p;
    }

    /** Reads an exponent with its letter; the place after it, or -1. Most are written with a sign and two digits. */
    private int exponent(byte[] bytes, int at) {
        int tens = bytes[at + 2] - '0';
        int ones = bytes[at + 3] - '0';
        int after = bytes[at + 4] - '0';
        boolean usual = (bytes[at] | 0x20) == 'e' && isDigit(tens) && isDigit(ones) && !isDigit(after);
        if (usual && (bytes[at + 1] == '-' || bytes[at + 1] == '+')) {
            exponent = bytes[at + 1] == '-' ? -(10 * tens + ones) : 10 * tens + ones;
            return at + 4;
        }
        return otherExponent(bytes, at);
    }

    private static boolean isDigit(int value) {
        return value >= 0 && value <= 9;
    }

    private int otherExponent(byte[] bytes, int at) {
        int letter = bytes[at] | 0x20;
        int p = at + 1;
        int sign = bytes[p];
        p += sign == '-' || sign == '+' ? 1 : 0;
        int start = p;
        int sum = 0;
        for (int digit = bytes[p] - '0';
                digit >= 0 && digit <= 9 && p - start <= LONGEST_EXPONENT;
                digit = bytes[p] - '0') {
            sum = sum * 10 + digit;
            p++;
        }
        exponent = sign == '-' ? -sum : sum;
        boolean fits = p > start && p - start <= LONGEST_EXPONENT;
        return (letter == 'e' || letter == 'd') && fits ? p : FAILED;
    }
}
