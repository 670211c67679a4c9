package clipwitness.reading.rows;

import clipwitness.reading.file.Notes;
import clipwitness.reason.Argument;
import clipwitness.reason.LayoutRemark;

/**
 * Rows at the start and at the end of a record that hold no value, only their time at most: memory that the instrument did not fill, and
 * rows that a spreadsheet added. They are no samples. Those between samples are.
 */
final class BareRows {
    private int leading;
    private int from;
    private int end;
    private boolean all;
    private boolean shortened;

    /** Whether all of so many rows were without value. */
    boolean all(int rows) {
        return leading == rows;
    }

    /** One of the first rows has fewer cells than others, which only first rows may. */
    void seeShort() {
        shortened = true;
    }

    /** Whether another, behind so many rows, has taken a row for one of the first, wrongly. */
    boolean mistakenBy(BareRows next, int before) {
        return next.shortened && !all(before);
    }

    /** A row without any value, with so many rows before it. */
    void see(int before) {
        leading += leading == before ? 1 : 0;
        from = end == before && end > 0 ? from : before;
        end = before + 1;
    }

    /** Goes on behind so many rows with what another has seen. */
    void see(BareRows next, int before) {
        if (next.end == 0) {
            return;
        }
        leading += leading == before ? next.leading : 0;
        from = next.from == 0 && end == before && end > 0 ? from : before + next.from;
        end = before + next.end;
    }

    /** Takes them out of the table, unless there are no other rows. */
    void end(NumberTable table, Notes notes) {
        all = leading >= table.rows();
        if (all) {
            return;
        }
        int last = end >= table.rows() && end > 0 ? Math.min(from, table.rows()) : table.rows();
        if (leading > 0) {
            notes.evidence(LayoutRemark.BARE_ROWS_FIRST, Argument.count(leading));
        }
        if (last < table.rows()) {
            notes.evidence(LayoutRemark.BARE_ROWS_LAST, Argument.count(table.rows() - last));
        }
        table.keep(leading, last);
    }

    /** How many rows were taken out in front of the others, once {@link #end} has taken them. */
    int skipped() {
        return all ? 0 : leading;
    }
}
