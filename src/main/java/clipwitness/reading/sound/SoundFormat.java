package clipwitness.reading.sound;

import java.util.Optional;

/** How a sample is written, little-endian, channels after one another. */
enum SoundFormat {
    PCM_16(2, 16),
    PCM_24(3, 24),
    PCM_32(4, 32),
    FLOAT_32(4, 24); // a significand of 24 bits (IEEE 754-2019, table 3.5)

    private static final int PCM = 1;
    private static final int FLOAT = 3;
    private static final double BYTES_32 = 0x1p31;

    private final int bytes;
    private final int bits;

    SoundFormat(int bytes, int bits) {
        this.bytes = bytes;
        this.bits = bits;
    }

    /** The format of a tag and a number of bits; nothing where it is none of these. */
    static Optional<SoundFormat> of(int tag, int bits) {
        if (tag == FLOAT) {
            return bits == 32 ? Optional.of(FLOAT_32) : Optional.empty();
        }
        if (tag != PCM) {
            return Optional.empty();
        }
        return switch (bits) {
            case 16 -> Optional.of(PCM_16);
            case 24 -> Optional.of(PCM_24);
            case 32 -> Optional.of(PCM_32);
            default -> Optional.empty();
        };
    }

    /** Bytes of a sample. */
    int bytes() {
        return bytes;
    }

    /** Bits that distinguish values. */
    int bits() {
        return bits;
    }

    /** Whether samples are whole numbers, which end at full scale. */
    boolean isWhole() {
        return this != FLOAT_32;
    }

    /** A sample as a fraction of full scale, which is 2^(bits - 1) counts. */
    double value(byte[] from, int at) {
        int word = 0;
        for (int i = 0; i < bytes; i++) { // shifted to the upper end, so that the sign is right
            word |= (from[at + i] & 0xff) << (8 * (4 - bytes + i));
        }
        return this == FLOAT_32 ? Float.intBitsToFloat(word) : word / BYTES_32;
    }
}
