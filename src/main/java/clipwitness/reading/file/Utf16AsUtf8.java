package clipwitness.reading.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** A stream of UTF-16 handed on as UTF-8, so that rows of every file can be scanned byte by byte. */
final class Utf16AsUtf8 extends InputStream {
    private static final int BLOCK = 1 << 16;

    private final Reader reader;
    private final char[] block = new char[BLOCK];
    private byte[] ready = new byte[0];
    private int next;
    private int held; // a first surrogate that waits for its second, or 0

    Utf16AsUtf8(InputStream in, Charset charset) {
        this.reader = new InputStreamReader(in, charset);
    }

    @Override
    public int read() throws IOException {
        return fill() ? ready[next++] & 0xFF : -1;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        if (length == 0) {
            return 0;
        }
        if (!fill()) {
            return -1;
        }
        int count = Math.min(length, ready.length - next);
        System.arraycopy(ready, next, into, offset, count);
        next += count;
        return count;
    }

    private boolean fill() throws IOException {
        while (next == ready.length) {
            int start = held == 0 ? 0 : 1;
            int count = reader.read(block, start, BLOCK - start);
            if (count < 0) {
                return false;
            }
            if (held != 0) {
                block[0] = (char) held;
            }
            int end = start + count;
            held = Character.isHighSurrogate(block[end - 1]) ? block[--end] : 0;
            ready = new String(block, 0, end).getBytes(StandardCharsets.UTF_8);
            next = 0;
        }
        return true;
    }

    @Override
    public void close() throws IOException {
        reader.close();
    }
}
