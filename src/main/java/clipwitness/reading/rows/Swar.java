package clipwitness.reading.rows;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/** Arithmetic on eight digits in one long, the first digit in the lowest byte. */
final class Swar {
    /** The character 0 in every byte; a digit less its 0 is its value. */
    static final long ZEROS = 0x3030303030303030L;

    private static final VarHandle LONGS = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

    private Swar() {}

    /** Eight bytes. */
    static long word(byte[] bytes, int at) {
        return (long) LONGS.get(bytes, at);
    }

    /**
     * The highest bit of each byte that is more than 9; above the first such byte, bits of others may be set too. Adding 0x76 takes a
     * byte of 10 or more to 0x80 or beyond.
     */
    static long others(long values) {
        return ((values + 0x7676767676767676L) | values) & 0x8080808080808080L;
    }

    /** The number whose eight digits have these values: by pairs, by fours, all. */
    static long sum(long values) {
        long pairs = values * 10 + (values >>> 8);
        long even = (pairs & 0x000000FF000000FFL) * (100 + (1_000_000L << 32));
        long odd = ((pairs >>> 16) & 0x000000FF000000FFL) * (1 + (10_000L << 32));
        return (even + odd) >>> 32;
    }
}
