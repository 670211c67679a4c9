package clipwitness.reading.file;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** The bytes of a file from its first on, noted as they are read, and no more than there were: a file may grow faster than it is read. */
final class SeenStream extends FilterInputStream {
    private final Seen seen;
    private final long size;
    private long place;

    SeenStream(InputStream in, long size, Seen seen) {
        super(in);
        this.size = size;
        this.seen = seen;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] bytes, int at, int most) throws IOException {
        int read = place < size || most == 0 ? in.read(bytes, at, (int) Math.min(most, size - place)) : -1;
        if (read > 0) {
            seen.stretch(place, bytes, at, read);
            place += read;
        }
        return read;
    }

    @Override
    public long skip(long most) throws IOException {
        long skipped = in.skip(Math.min(most, size - place));
        place += skipped;
        return skipped;
    }

    @Override
    public int available() throws IOException {
        return (int) Math.min(in.available(), size - place);
    }

    @Override
    public boolean markSupported() {
        return false;
    }
}
