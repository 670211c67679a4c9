package clipwitness.report.picture;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** A JPEG file as a row of segments (ITU-T T.81, annex B): finds how the camera was held, of how many colours it is, and whether it is whole. */
final class JpegFile {
    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.ISO_8859_1);
    private static final int MARK = 0xFF;
    private static final int START_OF_IMAGE = 0xD8;
    private static final int END_OF_IMAGE = 0xD9;
    private static final int FIRST_RESTART = 0xD0;
    private static final int LAST_RESTART = 0xD7;
    private static final int FIRST_FRAME = 0xC0;
    private static final int LAST_FRAME = 0xCF;
    private static final int HUFFMAN_TABLES = 0xC4;
    private static final int EXTENSION = 0xC8;
    private static final int ARITHMETIC_TABLES = 0xCC;
    private static final int COLOURS_IN_FRAME = 7;
    private static final int APP1 = 0xE1;

    private final byte[] bytes;
    private boolean whole;
    private int colours;
    private Orientation orientation = Orientation.UPRIGHT;

    private JpegFile(byte[] bytes) {
        this.bytes = bytes;
        int at = 2;
        while (at + 1 < bytes.length && !whole) {
            boolean marker = unsigned(at) == MARK && unsigned(at + 1) != MARK && isSegment(unsigned(at + 1));
            whole = marker && unsigned(at + 1) == END_OF_IMAGE;
            at = marker && !whole ? afterSegment(at) : at + 1; // fill bytes and the data of a scan
        }
    }

    /** Whether a file begins as a JPEG. */
    static boolean is(byte[] file) {
        return file.length > 4 && (file[0] & 0xFF) == MARK && (file[1] & 0xFF) == START_OF_IMAGE;
    }

    /** A file that begins as a JPEG. */
    static JpegFile of(byte[] file) {
        return new JpegFile(file);
    }

    /** Whether the file has its end: what breaks off on the way has none. */
    boolean isWhole() {
        return whole;
    }

    /** Colours of a pixel: 1 grey, 3 of a screen, 4 of a printing press; 0 where the file does not say. */
    int colours() {
        return colours;
    }

    /** How the camera was held. */
    Orientation orientation() {
        return orientation;
    }

    /** A marker with a segment, or the end; within the data of a scan, 0 and restarts are none. */
    private static boolean isSegment(int kind) {
        return kind != 0 && kind != 1 && !(kind >= FIRST_RESTART && kind <= LAST_RESTART);
    }

    private int unsigned(int at) {
        return bytes[at] & 0xFF;
    }

    /** Looks at the segment and gives the place after it; a length that leads out of the file ends the search. */
    private int afterSegment(int at) {
        int from = at + 4;
        int next = from <= bytes.length ? at + 2 + unsigned(at + 2) * 256 + unsigned(at + 3) : bytes.length;
        if (next < from || next > bytes.length) {
            return bytes.length;
        }
        int kind = unsigned(at + 1);
        if (kind == APP1 && Arrays.equals(bytes, from, Math.min(next, from + EXIF.length), EXIF, 0, EXIF.length)) {
            orientation = ExifOrientation.of(ByteBuffer.wrap(bytes, from + EXIF.length, next - from - EXIF.length)
                    .slice());
        }
        boolean frame = kind >= FIRST_FRAME
                && kind <= LAST_FRAME
                && kind != HUFFMAN_TABLES
                && kind != EXTENSION
                && kind != ARITHMETIC_TABLES;
        if (frame && next - at > COLOURS_IN_FRAME + 2) {
            colours = unsigned(at + 2 + COLOURS_IN_FRAME);
        }
        return next;
    }
}
