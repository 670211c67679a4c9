package clipwitness.reading.rows;

import clipwitness.fault.InputException;
import clipwitness.reading.file.Head;
import clipwitness.reading.file.LineEnd;
import clipwitness.reading.file.SourceFile;

/** Splits blocks of bytes into lines, hands each to the rows, and counts them for messages. */
final class LineScanner {
    private final String file;
    private final byte end;
    private final RowScanner rows;
    private int line;

    /**
     * A scanner of lines.
     *
     * @param table     takes the rows
     * @param firstLine number of the first line that it will meet
     */
    LineScanner(SourceFile file, LineEnd end, RowPlan plan, NumberTable table, int firstLine) {
        this.file = file.name();
        this.end = end.last();
        this.rows = new RowScanner(file.name(), file.headCharset(), end.last(), plan, table);
        this.line = firstLine;
    }

    /** The rows read so far. */
    RowScanner rows() {
        return rows;
    }

    /**
     * Reads the lines that start in one part of a block and end in the block.
     *
     * @param block  with zeros behind what is filled, see {@link PlainRow#SLACK}
     * @param from   start of a line
     * @param limit  end of the part, {@code filled} at most
     * @param filled end of what the block holds
     * @return start of the first line that was not read
     */
    int lines(byte[] block, int from, int limit, int filled) throws InputException {
        int start = from;
        while (start < limit) {
            int before = rows.table().rows();
            int next = rows.plain(block, start, limit);
            line += rows.table().rows() - before;
            if (next < 0) {
                int stop = find(end, block, start, filled);
                if (stop < 0) {
                    return start;
                }
                scan(block, start, stop, true);
                next = stop + 1;
                line++;
            }
            start = next;
        }
        return start;
    }

    /** Reads the last line of a file, which no line end follows. */
    void lastLine(byte[] block, int from, int to) throws InputException {
        scan(block, from, to, false);
    }

    /** Goes on behind what another has read, as {@link RowScanner#absorb} does. */
    boolean absorb(LineScanner next, int itsFirstLine) throws InputException {
        boolean absorbed = rows.absorb(next.rows);
        line += absorbed ? next.line - itsFirstLine : 0;
        return absorbed;
    }

    /** Place of the first such byte, or -1 where there is none; no line may be longer than a row ever is. */
    private int find(byte wanted, byte[] block, int from, int filled) throws InputException {
        for (int i = from; i < filled; i++) {
            if (block[i] == wanted) {
                return i;
            }
            if (i - from >= Head.LONGEST_LINE) {
                throw Head.tooLong(file, line);
            }
        }
        return -1;
    }

    private void scan(byte[] bytes, int from, int to, boolean ended) throws InputException {
        int last = to;
        while (last > from && bytes[last - 1] == '\r') {
            last--;
        }
        if (last > from) {
            rows.scan(bytes, from, last, line, ended);
        } else {
            rows.blankLine();
        }
    }
}
