package clipwitness.report.picture;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** How a camera was held, from what it wrote beside the picture. */
final class ExifOrientation {
    private static final int TAG = 0x112;
    private static final int ENTRY_LENGTH = 12;

    private ExifOrientation() {}

    /**
     * Looks through the first directory of the TIFF structure that Exif is written in; offsets are unsigned (TIFF 6.0, section 2).
     *
     * @param tiff the structure, from its first byte
     * @return upright where it says nothing, or is damaged
     */
    static Orientation of(ByteBuffer tiff) {
        if (tiff.limit() < 8) {
            return Orientation.UPRIGHT;
        }
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        long directory = Integer.toUnsignedLong(tiff.getInt(4));
        if (directory < 8 || directory + 2 > tiff.limit()) {
            return Orientation.UPRIGHT;
        }
        int entry = (int) directory + 2;
        int entries = tiff.getShort((int) directory) & 0xFFFF;
        for (int i = 0; i < entries && entry + ENTRY_LENGTH <= tiff.limit(); i++) {
            if ((tiff.getShort(entry) & 0xFFFF) == TAG) {
                return Orientation.of(tiff.getShort(entry + 8));
            }
            entry += ENTRY_LENGTH;
        }
        return Orientation.UPRIGHT;
    }
}
