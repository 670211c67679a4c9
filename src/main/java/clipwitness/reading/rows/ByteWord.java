package clipwitness.reading.rows;

/**
 * What eight bytes of a row have to be: digits in some places, certain bytes in others, anything behind the row's end. The first byte
 * is the lowest.
 *
 * @param expected  the character 0 where a digit has to be, elsewhere the byte itself
 * @param tolerance what takes a difference that is too large to 0x80 or beyond
 * @param counted   0x80 in each byte of the row
 */
record ByteWord(long expected, long tolerance, long counted) {
    /** Bytes that are checked at a time. */
    static final int BYTES = 8;

    private static final long DIGIT = 0x76; // 10 and more differ too much
    private static final long OTHER = 0x7F; // 1 and more do

    /** A word in which all bytes but the digits have to be as they are here, up to an end. */
    static ByteWord of(byte[] bytes, int from, int end) {
        long expected = 0;
        long tolerance = 0;
        long counted = 0;
        for (int i = 0; i < BYTES && from + i < end; i++) {
            int b = bytes[from + i] & 0xFF;
            boolean digit = isDigit(b);
            expected |= (digit ? '0' : (long) b) << (Byte.SIZE * i);
            tolerance |= (digit ? DIGIT : OTHER) << (Byte.SIZE * i);
            counted |= 0x80L << (Byte.SIZE * i);
        }
        return new ByteWord(expected, tolerance, counted);
    }

    /** 0 where the eight bytes are what they have to be. */
    long wrong(byte[] bytes, int from) {
        long difference = Swar.word(bytes, from) ^ expected;
        return ((difference + tolerance) | difference) & counted;
    }

    static boolean isDigit(int b) {
        return b >= '0' && b <= '9';
    }
}
