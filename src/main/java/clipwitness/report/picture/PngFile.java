package clipwitness.report.picture;

import java.nio.ByteBuffer;
import java.util.Arrays;

/** A PNG file as a row of chunks (ISO/IEC 15948, 5.3): finds how the camera was held. */
final class PngFile {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    /** Chunk that holds what a camera wrote (PNG third edition, 11.3.4.5: Exchangeable Image File Profile). */
    private static final int EXIF = 0x65584966;

    private static final int LENGTH_AND_TYPE = 8;
    private static final int CHECK = 4;

    private PngFile() {}

    /** Whether a file begins as a PNG. */
    static boolean is(byte[] file) {
        return file.length > SIGNATURE.length
                && Arrays.equals(file, 0, SIGNATURE.length, SIGNATURE, 0, SIGNATURE.length);
    }

    /** How the camera was held; upright where the file does not say. A length that leads out of the file ends the search. */
    static Orientation orientation(byte[] file) {
        ByteBuffer bytes = ByteBuffer.wrap(file);
        long at = SIGNATURE.length;
        while (at + LENGTH_AND_TYPE <= file.length) {
            long length = Integer.toUnsignedLong(bytes.getInt((int) at));
            long from = at + LENGTH_AND_TYPE;
            if (from + length > file.length) {
                return Orientation.UPRIGHT;
            }
            if (bytes.getInt((int) at + Integer.BYTES) == EXIF) {
                return ExifOrientation.of(
                        ByteBuffer.wrap(file, (int) from, (int) length).slice());
            }
            at = from + length + CHECK;
        }
        return Orientation.UPRIGHT;
    }
}
