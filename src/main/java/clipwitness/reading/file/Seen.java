package clipwitness.reading.file;

import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32C;

/**
 * What has been read of a file: each stretch with its checksum, so that a digest made afterwards is known to be of the same bytes. Several
 * threads may add stretches.
 */
class Seen {
    /** Keeps nothing, where no digest is asked for. */
    static final Seen NOTHING = new Seen() {
        @Override
        void stretch(long from, byte[] bytes, int at, int length) {
            // not kept
        }
    };

    private final List<Stretch> stretches = new ArrayList<>();

    /**
     * A stretch.
     *
     * @param from     place of its first byte in the file
     * @param length   its bytes
     * @param checksum CRC-32C of them (RFC 3720, appendix B.4)
     */
    record Stretch(long from, int length, long checksum) {
        long end() {
            return from + length;
        }
    }

    /** Notes bytes that were read from a place of the file. */
    void stretch(long from, byte[] bytes, int at, int length) {
        CRC32C checksum = new CRC32C();
        checksum.update(bytes, at, length);
        Stretch stretch = new Stretch(from, length, checksum.getValue());
        synchronized (stretches) {
            stretches.add(stretch);
        }
    }

    /** All of them. */
    List<Stretch> stretches() {
        synchronized (stretches) {
            return List.copyOf(stretches);
        }
    }
}
