package clipwitness.reading.file;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** The bytes of a file from its first on, noted as they are read. */
final class SeenStream extends FilterInputStream {
    private final Seen seen;
    private long place;

    SeenStream(InputStream in, Seen seen) {
        super(in);
        this.seen = seen;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] bytes, int at, int most) throws IOException {
        int read = in.read(bytes, at, most);
        if (read > 0) {
            seen.stretch(place, bytes, at, read);
            place += read;
        }
        return read;
    }

    @Override
    public long skip(long most) throws IOException {
        long skipped = in.skip(most);
        place += skipped;
        return skipped;
    }

    @Override
    public boolean markSupported() {
        return false;
    }
}
