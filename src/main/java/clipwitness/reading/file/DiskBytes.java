package clipwitness.reading.file;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;

/**
 * The bytes of a file as they lie on the disk, byte-order mark included. They are mapped into memory and copied from there, which costs
 * a fraction of what reading them does. Several threads may read at a time.
 */
public final class DiskBytes implements Closeable {
    private final FileChannel channel;
    private final long size;
    private final Seen seen;

    private DiskBytes(FileChannel channel, Seen seen) throws IOException {
        this.channel = channel;
        this.size = channel.size();
        this.seen = seen;
    }

    /**
     * Opens a file.
     *
     * @param seen told what is read
     */
    static DiskBytes of(Path path, Seen seen) throws IOException {
        return new DiskBytes(FileChannel.open(path), seen);
    }

    /** How many there were when the file was opened. */
    public long size() {
        return size;
    }

    /**
     * Copies bytes.
     *
     * @param from place of the first in the file
     * @param into takes them
     * @param at   place of the first there
     * @param most how many, unless the file ends before
     * @return how many there were
     */
    public int read(long from, byte[] into, int at, int most) throws IOException {
        int length = (int) Math.max(0, Math.min(most, size - from));
        if (length > 0) {
            try {
                channel.map(FileChannel.MapMode.READ_ONLY, from, length).get(into, at, length);
            } catch (IOException | InternalError e) { // not every disk can be mapped, and a file may be cut meanwhile
                readPlainly(from, ByteBuffer.wrap(into, at, length));
            }
            seen.stretch(from, into, at, length);
        }
        return length;
    }

    private void readPlainly(long from, ByteBuffer into) throws IOException {
        long next = from;
        while (into.hasRemaining()) { // a channel may hand out less than it is asked for
            int read = channel.read(into, next);
            if (read < 0) {
                throw new IOException("it became shorter while it was read");
            }
            next += read;
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
