package clipwitness.reading.rows;

import clipwitness.fault.InputException;
import clipwitness.reading.file.Notes;
import clipwitness.reason.Argument;
import clipwitness.reason.LayoutRemark;

/**
 * What stands at the end of a file without being a whole row. One row with fewer values than the others means that the file was cut,
 * and is left out; several mean that some channels end earlier; lines of text are left out. Where a whole row follows after all, the
 * first of them was a fault.
 */
final class Tail {
    private InputException fault;
    private int firstLine;
    private int lastLine;
    private int rows;
    private boolean cut;
    private int texts;

    /** A whole row. */
    void wholeRow() throws InputException {
        if (fault != null) {
            throw fault;
        }
    }

    /**
     * A row with fewer values.
     *
     * @param ends     whether only the last row may be so: the file ends in it without a line end, or it does not hold its own time
     * @param ifInside what the user is told if a whole row follows
     */
    void shortRow(int line, boolean ends, InputException ifInside) throws InputException {
        if (cut) {
            throw fault;
        }
        fault = fault == null ? ifInside : fault;
        firstLine = rows == 0 ? line : firstLine;
        lastLine = line;
        cut = ends;
        rows++;
    }

    /**
     * A line of text without any number.
     *
     * @param ifInside what the user is told if a whole row follows
     */
    void textLine(InputException ifInside) {
        fault = fault == null ? ifInside : fault;
        texts++;
    }

    /** Whether all rows were whole. */
    boolean none() {
        return rows + texts == 0;
    }

    /** The file has ended: leaves out the row that is cut. */
    void end(NumberTable table, Notes notes) {
        boolean leftOut = rows == 1 || cut;
        if (leftOut) {
            table.dropLast();
            notes.evidence(LayoutRemark.LAST_ROW_CUT, Argument.count(lastLine));
        }
        if (rows > (leftOut ? 1 : 0)) {
            notes.evidence(LayoutRemark.CHANNEL_ENDS, Argument.count(firstLine));
        }
        if (texts > 0) {
            notes.evidence(LayoutRemark.TEXT_BELOW, Argument.count(texts));
        }
    }
}
