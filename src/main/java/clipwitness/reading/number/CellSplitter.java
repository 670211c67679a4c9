package clipwitness.reading.number;

import java.util.EnumMap;
import java.util.Map;

/**
 * Walks along the cells of one row of bytes. Blanks around a cell and the quotes about it are no part of it. Reused from row to row,
 * so it belongs to one thread.
 */
public final class CellSplitter {
    private static final int ASCII = 128;

    /** For each delimiter which characters of ASCII end a cell: made once, as there is a splitter for each line that is looked at. */
    private static final Map<Delimiter, boolean[]> ENDS = tables();

    private final boolean[] ends;
    private final boolean runs;

    private byte[] bytes = new byte[0];
    private int next;
    private int rowEnd;
    private int from;
    private int to;
    private boolean more;

    public CellSplitter(Delimiter delimiter) {
        this.ends = ENDS.get(delimiter);
        this.runs = delimiter.blanks();
    }

    private static Map<Delimiter, boolean[]> tables() {
        Map<Delimiter, boolean[]> tables = new EnumMap<>(Delimiter.class);
        for (Delimiter delimiter : Delimiter.values()) {
            boolean[] table = new boolean[ASCII];
            for (int c = 0; c < ASCII; c++) {
                table[c] = delimiter.ends(c);
            }
            tables.put(delimiter, table);
        }
        return tables;
    }

    /** Goes to a row, before its first cell. */
    public void row(byte[] bytes, int from, int to) {
        this.bytes = bytes;
        this.rowEnd = to;
        this.next = skipBlanks(from);
        this.more = next < rowEnd;
    }

    /** Goes to the next cell; whether there is one. */
    public boolean next() {
        if (!more) {
            return false;
        }
        boolean quoted = next < rowEnd && bytes[next] == '"' && closingQuote(next) > 0;
        int end = quoted ? closingQuote(next) : next;
        while (end < rowEnd && !isEnd(end)) {
            end++;
        }
        from = next;
        to = end;
        trim();
        goOn(end);
        return true;
    }

    /** Place of the cell's first byte. */
    public int from() {
        return from;
    }

    /** Place after the cell's last byte. */
    public int to() {
        return to;
    }

    private void trim() {
        trimEnd();
        if (to - from > 1 && bytes[from] == '"' && bytes[to - 1] == '"') {
            to--;
            from++;
            trimEnd();
            while (from < to && bytes[from] == ' ') {
                from++;
            }
        }
    }

    private void trimEnd() {
        while (to > from && (bytes[to - 1] == ' ' || bytes[to - 1] == '\t')) {
            to--;
        }
    }

    private void goOn(int end) {
        more = end < rowEnd;
        if (!more) {
            return;
        }
        next = skipBlanks(end + 1);
        if (runs && isBlank(bytes[end]) && next < rowEnd && isEnd(next)) {
            next = skipBlanks(next + 1); // a blank before another delimiter is no cell
        }
        more = next < rowEnd || !runs;
    }

    private boolean isEnd(int at) {
        return bytes[at] >= 0 && ends[bytes[at]];
    }

    private int skipBlanks(int at) {
        int p = at;
        while (p < rowEnd && (bytes[p] == ' ' || (bytes[p] == '\t' && (runs || !ends['\t'])))) {
            p++;
        }
        return p;
    }

    private static boolean isBlank(byte b) {
        return b == ' ' || b == '\t';
    }

    /** The place of the quote that closes the one at {@code open}, or -1; a doubled quote stands for a quote. */
    private int closingQuote(int open) {
        for (int p = open + 1; p < rowEnd; p++) {
            if (bytes[p] == '"') {
                if (p + 1 == rowEnd || bytes[p + 1] != '"') {
                    return p;
                }
                p++;
            }
        }
        return -1;
    }
}
