package clipwitness.reading.rows;

import clipwitness.fault.InputException;
import clipwitness.reading.file.Head;
import clipwitness.reading.file.LineEnd;
import clipwitness.reading.file.Notes;
import clipwitness.reading.file.SourceFile;
import clipwitness.reading.layout.DataBlock;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.function.LongConsumer;

/**
 * Reads all rows of a file: the pieces of a long one on several cores, block by block what is left.
 *
 * @param table      the kept columns
 * @param timeDigits most significant digits of a time stamp, 0 without time stamps
 * @param stretches  number of stretches into which blank lines divide the rows
 * @param skipped    number of rows without values that were left out in front of the others
 */
public record DataPass(NumberTable table, int timeDigits, int stretches, int skipped) {
    private static final int BLOCK = 1 << 18;

    /** Holds the longest line. */
    private static final int LEAST_BLOCK = 2 * Head.LONGEST_LINE;

    /** Reads the rows. */
    public static DataPass of(SourceFile file, Head head, DataBlock block, RowPlan plan, Work work, Notes notes)
            throws InputException {
        try {
            long origin = startOf(file.head(), head.lineEnd(), block.firstLine());
            long expected = block.rowsIn(file.recodedSize(), file.head().length - origin);
            NumberTable table =
                    new NumberTable(file.name(), work.room(), plan.places().size(), expected);
            LineScanner lines = new LineScanner(file, head.lineEnd(), plan, table, block.firstLine());
            int mark = file.encoding().mark();
            if (!file.encoding().wide() && work.split().pays(file.size() - mark - origin)) {
                Pieces pieces = new Pieces(file, head.lineEnd(), plan, work, mark + origin);
                origin = pieces.read(lines) - mark;
            }
            readRest(file, origin, lines, work.progress());
            lines.rows().end(notes);
            RowScanner rows = lines.rows();
            return new DataPass(rows.table(), rows.timeDigits(), rows.stretches(), rows.skipped());
        } catch (IOException e) {
            throw SourceFile.unreadable(file.name(), e);
        }
    }

    private static void readRest(SourceFile file, long origin, LineScanner lines, LongConsumer progress)
            throws IOException, InputException {
        try (InputStream in = file.stream()) {
            in.skipNBytes(origin);
            int most = (int) Math.max(LEAST_BLOCK, Math.min(BLOCK, file.size()));
            byte[] block = new byte[most + PlainRow.SLACK];
            int held = 0;
            int read = in.readNBytes(block, 0, most);
            while (read > 0) {
                int filled = held + read;
                Arrays.fill(block, filled, filled + PlainRow.SLACK, (byte) 0);
                int start = lines.lines(block, 0, filled, filled);
                held = filled - start;
                System.arraycopy(block, start, block, 0, held);
                progress.accept((long) read * file.bytesForOne());
                read = in.readNBytes(block, held, most - held);
            }
            lines.lastLine(block, 0, held);
        }
    }

    /** Place of a line in the first part of a file. */
    private static long startOf(byte[] head, LineEnd end, int line) {
        int place = 0;
        for (int before = 1; before < line; place++) {
            before += head[place] == end.last() ? 1 : 0;
        }
        return place;
    }
}
