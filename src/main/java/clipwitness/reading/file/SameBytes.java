package clipwitness.reading.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.zip.CRC32C;

/** Digests a file that was read, and tells whether its bytes are those that were read. */
final class SameBytes {
    private static final int BLOCK = 1 << 18;

    private final Deque<Seen.Stretch> ahead;
    private final List<Open> open = new ArrayList<>();
    private boolean same = true;

    private SameBytes(List<Seen.Stretch> stretches) {
        ahead = new ArrayDeque<>(stretches.stream()
                .sorted(Comparator.comparingLong(Seen.Stretch::from))
                .toList());
    }

    /** A stretch in which the pass is, with the checksum so far. */
    private record Open(Seen.Stretch stretch, CRC32C checksum) {}

    /**
     * Digests a file.
     *
     * @param size   its size when it was read, bytes
     * @param digest takes all its bytes
     * @return whether the file has that size, and every stretch holds what it held then
     */
    static boolean digest(Path file, long size, Seen seen, MessageDigest digest) throws IOException {
        SameBytes pass = new SameBytes(seen.stretches());
        byte[] block = new byte[(int) Math.max(1, Math.min(BLOCK, size))];
        long place = 0;
        try (InputStream in = Files.newInputStream(file)) {
            for (int n = in.read(block); n >= 0 && pass.same; n = in.read(block)) {
                digest.update(block, 0, n);
                pass.compare(block, place, n);
                place += n;
            }
        }
        return pass.same && place == size && pass.open.isEmpty() && pass.ahead.isEmpty();
    }

    private void compare(byte[] block, long place, int length) {
        while (!ahead.isEmpty() && ahead.peek().from() < place + length) {
            open.add(new Open(ahead.remove(), new CRC32C()));
        }
        for (Iterator<Open> each = open.iterator(); each.hasNext(); ) {
            Open o = each.next();
            int first = (int) Math.max(0, o.stretch.from() - place);
            int end = (int) Math.min(length, o.stretch.end() - place);
            o.checksum.update(block, first, end - first);
            if (o.stretch.end() <= place + length) {
                same &= o.checksum.getValue() == o.stretch.checksum();
                each.remove();
            }
        }
    }
}
