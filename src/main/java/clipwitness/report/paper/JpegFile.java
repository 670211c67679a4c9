package clipwitness.report.paper;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * A JPEG file as a row of segments (ITU-T T.81, annex B): finds how the camera was held, and leaves out what it wrote beside the
 * picture.
 */
final class JpegFile {
    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.ISO_8859_1);
    private static final int MARK = 0xFF;
    private static final int START_OF_IMAGE = 0xD8;
    private static final int END_OF_IMAGE = 0xD9;
    private static final int START_OF_SCAN = 0xDA;
    private static final int APP1 = 0xE1;
    private static final int APP13 = 0xED;
    private static final int COLOUR_PROFILE = 0xE2;
    private static final int COMMENT = 0xFE;
    private static final int ORIENTATION_TAG = 0x112;
    private static final int ENTRY_LENGTH = 12;

    private final byte[] bytes;
    private final int scan;
    private final ByteArrayOutputStream kept = new ByteArrayOutputStream();
    private Orientation orientation = Orientation.UPRIGHT;

    private JpegFile(byte[] bytes) {
        this.bytes = bytes;
        kept.write(bytes, 0, 2);
        int at = 2;
        while (at + 4 <= bytes.length && unsigned(at) == MARK && unsigned(at + 1) != START_OF_SCAN) {
            int next = at + 2 + unsigned(at + 2) * 256 + unsigned(at + 3);
            if (next <= at + 3 || next > bytes.length) {
                break;
            }
            segment(at, next);
            at = next;
        }
        scan = at;
        kept.write(bytes, at, bytes.length - at);
    }

    /** The file, where it is a JPEG. */
    static Optional<JpegFile> of(byte[] bytes) {
        boolean jpeg = bytes.length > 4 && (bytes[0] & 0xFF) == MARK && (bytes[1] & 0xFF) == START_OF_IMAGE;
        return jpeg ? Optional.of(new JpegFile(bytes)) : Optional.empty();
    }

    /** Whether the file has its end: what breaks off on the way has none. */
    boolean isWhole() {
        for (int at = bytes.length - 2; at > 1; at--) {
            if (unsigned(at) == MARK && unsigned(at + 1) == END_OF_IMAGE) {
                return at > scan;
            }
        }
        return false;
    }

    private int unsigned(int at) {
        return bytes[at] & 0xFF;
    }

    private void segment(int at, int next) {
        int kind = unsigned(at + 1);
        if (kind == APP1 && Arrays.equals(bytes, at + 4, Math.min(next, at + 4 + EXIF.length), EXIF, 0, EXIF.length)) {
            orientation = orientation(ByteBuffer.wrap(bytes, at + 4 + EXIF.length, next - at - 4 - EXIF.length)
                    .slice());
        }
        boolean note = kind == COMMENT || (kind >= APP1 && kind <= APP13 && kind != COLOUR_PROFILE);
        if (!note) {
            kept.write(bytes, at, next - at);
        }
    }

    /** Looks through the first directory of the TIFF structure that Exif is written in. */
    private static Orientation orientation(ByteBuffer tiff) {
        if (tiff.limit() < 8) {
            return Orientation.UPRIGHT;
        }
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = tiff.getInt(4);
        if (directory < 8 || directory + 2 > tiff.limit()) {
            return Orientation.UPRIGHT;
        }
        int entries = tiff.getShort(directory) & 0xFFFF;
        for (int entry = directory + 2, i = 0; i < entries && entry + ENTRY_LENGTH <= tiff.limit(); i++) {
            if ((tiff.getShort(entry) & 0xFFFF) == ORIENTATION_TAG) {
                return Orientation.of(tiff.getShort(entry + 8));
            }
            entry += ENTRY_LENGTH;
        }
        return Orientation.UPRIGHT;
    }

    /** How the camera was held. */
    Orientation orientation() {
        return orientation;
    }

    /** The file without the camera's notes; colour profile and picture stay. */
    byte[] withoutNotes() {
        return kept.toByteArray();
    }
}
