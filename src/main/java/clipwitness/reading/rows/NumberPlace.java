package clipwitness.reading.rows;

import clipwitness.reading.number.CellReader;

/**
 * Where in a row a number stands, and how it is written.
 *
 * @param at             place of its first digit after the start of the row
 * @param digits         its digits
 * @param negative       whether a minus stands before it
 * @param exponentAt     place of the first digit of its exponent
 * @param exponentDigits how many the exponent has; 0 for a number without exponent
 * @param exponentSign   -1 or 1
 */
record NumberPlace(int at, NumberShape digits, boolean negative, int exponentAt, int exponentDigits, int exponentSign) {
    /** With at most {@link NumberShape#MOST_DIGITS} digits before it, the value is under any overflow mark. */
    private static final int LARGEST_POWER = 20;

    private static final int MOST_EXPONENT_DIGITS = 3;
    private static final double TWO_TO_52 = 0x1p52; // from here on, doubles are whole numbers

    /**
     * The number in a cell of a plain row.
     *
     * @param row  start of the row
     * @param cell place of its first character
     * @return null where the number is too long
     */
    static NumberPlace of(byte[] bytes, int row, int cell, byte mark) {
        int p = cell;
        boolean negative = bytes[p] == '-';
        p += isSign(bytes[p]) ? 1 : 0;
        int at = p;
        int whole = digits(bytes, p);
        p += whole;
        int fraction = bytes[p] == mark ? digits(bytes, p + 1) : 0;
        p += fraction == 0 ? 0 : fraction + 1;
        if (!NumberShape.fits(whole, fraction)) {
            return null;
        }
        boolean exponent = "eEdD".indexOf(bytes[p]) >= 0;
        p += exponent ? 1 : 0;
        int exponentSign = exponent && bytes[p] == '-' ? -1 : 1;
        p += exponent && isSign(bytes[p]) ? 1 : 0;
        int exponentDigits = exponent ? digits(bytes, p) : 0;
        return exponentDigits > MOST_EXPONENT_DIGITS
                ? null
                : new NumberPlace(
                        at - row, new NumberShape(whole, fraction), negative, p - row, exponentDigits, exponentSign);
    }

    /** Characters from the decimal mark on, exponent included; 0 without a mark. */
    int afterMark() {
        return digits.fraction() == 0 ? 0 : exponentAt + exponentDigits - at - digits.whole();
    }

    /** The digits as a whole number. */
    long mantissa(byte[] bytes, int row) {
        return digits.mantissa(bytes, row + at);
    }

    /** Power of ten that the digits are multiplied by. */
    int power(byte[] bytes, int row) {
        int place = row + exponentAt;
        int exponent = exponentDigits == 2 ? 10 * bytes[place] + bytes[place + 1] - 11 * '0' : exponent(bytes, place);
        return exponentSign * exponent - digits.fraction();
    }

    private int exponent(byte[] bytes, int place) {
        int exponent = 0;
        for (int i = 0; i < exponentDigits; i++) {
            exponent = 10 * exponent + bytes[place + i] - '0';
        }
        return exponent;
    }

    /** Whether scaling by this power of ten rounds once, and gives no overflow mark. */
    static boolean isExact(int power) {
        return power >= -CellReader.EXACT_POWER && power <= LARGEST_POWER;
    }

    /** The number, rounded once. */
    double value(long mantissa, int power) {
        double exact = exact(mantissa);
        double magnitude = CellReader.scaled(exact, power);
        return negative ? -magnitude : magnitude;
    }

    /**
     * A whole number from 0 to 2^52 as a double: its bits under the exponent of 2^52, less 2^52. The machine's own conversion keeps
     * the upper half of the register that it writes to, so each number would wait for the division of the one before.
     */
    private static double exact(long whole) {
        return Double.longBitsToDouble(Double.doubleToRawLongBits(TWO_TO_52) | whole) - TWO_TO_52;
    }

    private static boolean isSign(byte b) {
        return b == '-' || b == '+';
    }

    private static int digits(byte[] bytes, int from) {
        int p = from;
        while (ByteWord.isDigit(bytes[p])) {
            p++;
        }
        return p - from;
    }
}
