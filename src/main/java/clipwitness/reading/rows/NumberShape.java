package clipwitness.reading.rows;

/**
 * How a number without sign and exponent is written: how many digits before and after its mark. With that known, all its digits are
 * summed at once.
 *
 * <p>The first word holds the first eight bytes, the first byte lowest; the mark is closed up, the digits moved to the upper end, and
 * what lies below them reads as zeros. A second word holds what is left.
 */
final class NumberShape {
    /** The digits of a number that is a double exactly, so that scaling rounds once. */
    static final int MOST_DIGITS = 15;

    private static final int WORD = 8;

    private final int whole;
    private final int fraction;
    private final int length;
    private final long beforeMark;
    private final long afterMark;
    private final int shift;
    private final long zeros;
    private final int restShift;
    private final long restZeros;
    private final long restPower;

    /**
     * A shape.
     *
     * @param whole    digits before the mark, at most 7 where there is one
     * @param fraction digits after it; 0 for a whole number without mark
     */
    NumberShape(int whole, int fraction) {
        this.whole = whole;
        this.fraction = fraction;
        int mark = fraction == 0 ? 0 : 1;
        this.length = whole + mark + fraction;
        int first = Math.min(WORD, length);
        this.beforeMark = mark == 0 ? 0 : lowest(whole);
        this.afterMark = lowest(first) & ~lowest(mark == 0 ? 0 : whole + 1);
        this.shift = 8 * (WORD - first);
        this.zeros = Swar.ZEROS & ~lowest(WORD - first + mark);
        int rest = length - first;
        this.restShift = 8 * (WORD - rest);
        this.restZeros = Swar.ZEROS & ~lowest(WORD - rest);
        this.restPower = Math.round(Math.pow(10, rest));
    }

    /** Whether numbers with so many digits before and after the mark have a shape. */
    static boolean fits(int whole, int fraction) {
        return whole + fraction <= MOST_DIGITS && (fraction == 0 || whole < WORD);
    }

    /** Digits after the mark. */
    int fraction() {
        return fraction;
    }

    /** Digits before the mark, which is the mark's place. */
    int whole() {
        return whole;
    }

    /** The number without its mark; digits must stand where digits are due. */
    long mantissa(byte[] bytes, int at) {
        long word = Swar.word(bytes, at);
        long digits = ((((word & beforeMark) << 8) | (word & afterMark)) << shift) ^ zeros;
        if (length <= WORD) {
            return Swar.sum(digits);
        }
        long rest = (Swar.word(bytes, at + WORD) << restShift) ^ restZeros;
        return Swar.sum(digits) * restPower + Swar.sum(rest);
    }

    /** Ones in the lowest bytes of a word. */
    private static long lowest(int bytes) {
        return bytes == WORD ? -1 : (1L << (8 * bytes)) - 1;
    }
}
