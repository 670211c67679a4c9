package clipwitness.reading.number;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;
import clipwitness.quantity.Unit;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Reads one cell of a row as a number, from its bytes: digits with one decimal mark, an exponent after E, e or D, or a mark that
 * stands for no value. Reused from cell to cell, so it belongs to one thread.
 */
public final class CellReader {
    private static final int LONGEST_NUMBER = 200;
    private static final int EXACT_DIGITS = 15; // a number of up to 15 digits is exact in a double
    /** A power of ten up to this one is exact in a double. */
    public static final int EXACT_POWER = 22;

    private static final double[] POWERS = new double[EXACT_POWER + 1];

    static {
        for (int i = 0; i <= EXACT_POWER; i++) {
            POWERS[i] = Double.parseDouble("1e" + i);
        }
    }

    /**
     * A value times a power of ten.
     *
     * @param power from -22 to 22, where powers of ten are exact
     */
    public static double scaled(double value, int power) {
        return power < 0 ? value / POWERS[-power] : value * POWERS[power];
    }

    private final int mark;
    private final boolean annotated;

    private double value;
    private long mantissa;
    private int digits;
    private int fraction;
    private int afterMark;
    private Optional<Unit> unit = Optional.empty();

    /** A reader for numbers with this decimal mark, a point or a comma. */
    public CellReader(char mark) {
        this(mark, false);
    }

    /**
     * A reader.
     *
     * @param annotated whether numbers with a unit and times of day are numbers too, read in V, A and s
     */
    public CellReader(char mark, boolean annotated) {
        this.mark = mark;
        this.annotated = annotated;
    }

    /** Value of the last cell read; NaN for a gap. */
    public double value() {
        return value;
    }

    /** Unit that the last cell was written with, seconds for a time of day; empty for a plain number and for a gap. */
    public Optional<Unit> unit() {
        return unit;
    }

    /** Significant digits of the last number read, trailing zeros included; 0 for zero and for a gap. */
    public int digits() {
        return digits;
    }

    /** Characters of the last number read from its decimal mark on, exponent included. */
    public int afterMark() {
        return afterMark;
    }

    /**
     * Reads a cell without blanks around it.
     *
     * @return whether the cell is a number or a gap
     */
    public boolean read(byte[] bytes, int from, int to) {
        unit = Optional.empty();
        int sign = signLength(bytes, from, to);
        int start = from + sign;
        while (start > from && start < to && bytes[start] == ' ') {
            start++;
        }
        int end = readDigits(bytes, start, to);
        int exponent = end < 0 ? -1 : readExponent(bytes, end, to);
        if (exponent == Integer.MIN_VALUE || end < 0 || to - from > LONGEST_NUMBER) {
            value = Double.NaN;
            digits = 0;
            return GapMarks.isMark(bytes, from, to) || (annotated && readAnnotated(bytes, from, to));
        }
        double magnitude = magnitude(bytes, start, to, exponent - fraction);
        value = magnitude >= GapMarks.LARGEST_VALUE ? Double.NaN : isMinus(bytes, from, sign) ? -magnitude : magnitude;
        return true;
    }

    private boolean readAnnotated(byte[] bytes, int from, int to) {
        String text = new String(bytes, from, to - from, StandardCharsets.UTF_8);
        Optional<AnnotatedNumber> number = AnnotatedNumber.parse(text);
        if (number.isEmpty()) {
            return false;
        }
        byte[] plain = number.get().plain((char) mark).getBytes(StandardCharsets.US_ASCII);
        boolean read = read(plain, 0, plain.length);
        unit = Optional.of(number.get().unit());
        return read;
    }

    /** Bytes of the sign: one for plus and hyphen, three for the minus sign of UTF-8 (U+2212), 0 without a sign. */
    private static int signLength(byte[] bytes, int from, int to) {
        boolean one = from < to && (bytes[from] == '-' || bytes[from] == '+');
        boolean three = to - from > 3
                && bytes[from] == (byte) 0xE2
                && bytes[from + 1] == (byte) 0x88
                && bytes[from + 2] == (byte) 0x92;
        return one ? 1 : three ? 3 : 0;
    }

    private static boolean isMinus(byte[] bytes, int from, int sign) {
        return sign == 3 || (sign == 1 && bytes[from] == '-');
    }

    /** Reads digits and decimal mark; the place after them, or -1 where there is no digit. */
    private int readDigits(byte[] bytes, int start, int to) {
        mantissa = 0;
        digits = 0;
        fraction = 0;
        int markAt = -1;
        int p = start;
        for (; p < to; p++) {
            int digit = bytes[p] - '0';
            if (digit >= 0 && digit <= 9) {
                digits += digits > 0 || digit > 0 ? 1 : 0;
                mantissa = digits <= EXACT_DIGITS ? mantissa * 10 + digit : mantissa;
                fraction += markAt >= 0 ? 1 : 0;
            } else if (bytes[p] == mark && markAt < 0) {
                markAt = p;
            } else {
                break;
            }
        }
        afterMark = markAt < 0 ? 0 : to - markAt;
        boolean any = p - start > (markAt < 0 ? 0 : 1);
        boolean delimiting = mark == ',' && markAt == p - 1; // "3." is a number, but the comma of "3," ends a cell
        return any && !delimiting ? p : -1;
    }

    /** Reads the exponent up to the cell's end; the smallest integer where something else stands there. */
    private static int readExponent(byte[] bytes, int at, int to) {
        if (at == to) {
            return 0;
        }
        int letter = bytes[at] | 0x20;
        int p = at + 1;
        boolean negative = p < to && bytes[p] == '-';
        p += p < to && (bytes[p] == '-' || bytes[p] == '+') ? 1 : 0;
        if ((letter != 'e' && letter != 'd') || p == to || to - p > 4) {
            return Integer.MIN_VALUE;
        }
        int exponent = 0;
        for (; p < to; p++) {
            int digit = bytes[p] - '0';
            if (digit < 0 || digit > 9) {
                return Integer.MIN_VALUE;
            }
            exponent = exponent * 10 + digit;
        }
        return negative ? -exponent : exponent;
    }

    /** The number without its sign, rounded once: from exact parts where they are exact, else by the full parser. */
    private double magnitude(byte[] bytes, int start, int to, int power) {
        if (digits <= EXACT_DIGITS && Math.abs(power) <= EXACT_POWER) {
            return scaled((double) mantissa, power);
        }
        int length = to - start;
        byte[] plain = new byte[length];
        for (int i = 0; i < length; i++) {
            int c = bytes[start + i];
            plain[i] = (byte) (c == mark ? '.' : c == 'd' || c == 'D' ? 'e' : c);
        }
        return JavaDoubleParser.parseDouble(plain, 0, length);
    }
}
