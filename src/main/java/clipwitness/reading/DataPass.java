package clipwitness.reading;

import clipwitness.capture.InputException;
import java.io.IOException;
import java.io.InputStream;

/**
 * Reads all rows of a file, block by block.
 *
 * @param table      the kept columns
 * @param timeDigits most significant digits of a time stamp, 0 without time stamps
 */
record DataPass(Table table, int timeDigits) {
    private static final int BLOCK = 1 << 20;
    private static final int MOST_EXPECTED = 1 << 24;

    /** Reads the rows. */
    static DataPass of(SourceFile file, Head head, DataBlock block, RowPlan plan, Notes notes) throws InputException {
        try (InputStream in = file.stream()) {
            Table table = new Table(plan.places().size(), expectedRows(file, block));
            RowScanner scanner = new RowScanner(file.name(), file.headCharset(), plan, table);
            readAll(in, file.name(), head.lineEnd().last(), block.firstLine(), scanner);
            scanner.end(notes);
            return new DataPass(table, scanner.timeDigits());
        } catch (IOException e) {
            throw SourceFile.unreadable(file.name(), e);
        }
    }

    private static void readAll(InputStream in, String name, byte end, int firstLine, RowScanner scanner)
            throws IOException, InputException {
        byte[] block = new byte[BLOCK];
        int held = 0;
        int line = 1;
        int read = in.readNBytes(block, 0, BLOCK);
        while (read > 0) {
            int filled = held + read;
            int start = 0;
            for (int i = held; i < filled; i++) {
                if (block[i] == end) {
                    scan(scanner, block, start, i, line, firstLine, true);
                    start = i + 1;
                    line++;
                }
            }
            held = filled - start;
            if (held > Head.LONGEST_LINE) {
                throw Head.tooLong(name, line);
            }
            System.arraycopy(block, start, block, 0, held);
            read = in.readNBytes(block, held, BLOCK - held);
        }
        scan(scanner, block, 0, held, line, firstLine, false);
    }

    private static void scan(RowScanner scanner, byte[] bytes, int from, int to, int line, int firstLine, boolean ended)
            throws InputException {
        int last = to;
        while (last > from && bytes[last - 1] == '\r') {
            last--;
        }
        if (line >= firstLine && last > from) {
            scanner.scan(bytes, from, last, line, ended);
        }
    }

    private static int expectedRows(SourceFile file, DataBlock block) throws IOException {
        long characters =
                block.rows().stream().mapToLong(r -> r.text().length() + 1L).sum();
        long size = file.encoding().wide() ? file.size() / 2 : file.size();
        return (int) Math.min(MOST_EXPECTED, size * block.rows().size() / Math.max(1, characters) + 1);
    }
}
