package clipwitness.reading;

import clipwitness.capture.InputException;
import java.util.Optional;

/** Reads rows of bytes into a table, cell by cell, without a text for any of them. */
final class RowScanner {
    private final RowPlan plan;
    private final RowFaults faults;
    private final int[] keptBy;
    private final CellSplitter splitter;
    private final CellReader reader;
    private final double[] row;
    private final CutEnd cutEnd = new CutEnd();
    private final Table table;

    private int timeDigits;
    private double lastTime = Double.NEGATIVE_INFINITY;
    private InputException incomplete;
    private int incompleteLine;

    RowScanner(String file, RowPlan plan, Table table) {
        this.plan = plan;
        this.faults = new RowFaults(file, plan);
        this.keptBy = plan.keptBy();
        this.splitter = new CellSplitter(plan.dialect().delimiter());
        this.reader = new CellReader(plan.dialect().mark());
        this.row = new double[plan.places().size()];
        this.table = table;
    }

    /** Most significant digits that a time stamp was written with. */
    int timeDigits() {
        return timeDigits;
    }

    /** The line of a last row that is left out because the file ends inside it. */
    Optional<Integer> leftOut() {
        return incomplete == null ? Optional.empty() : Optional.of(incompleteLine);
    }

    /**
     * Reads one line into the table; blank lines and comments are passed over.
     *
     * @param line  number of the line
     * @param ended whether a line end follows it
     */
    void scan(byte[] bytes, int from, int to, int line, boolean ended) throws InputException {
        splitter.row(bytes, from, to);
        if (!splitter.next() || (bytes[splitter.from()] == '#' && !isMark(bytes))) {
            return;
        }
        if (incomplete != null) {
            throw incomplete;
        }
        int kept = keep(bytes, line, ended);
        if (kept == 0 || incomplete != null) {
            return;
        }
        if (kept < row.length) {
            putAside(faults.tooShort(line, kept), line);
        } else if (!ended && cutEnd.isCut(reader)) {
            putAside(faults.tooShort(line, kept), line);
        } else {
            if (!Double.isNaN(row[row.length - 1])) {
                cutEnd.see(reader);
            }
            takeTime(line);
            table.add(row);
        }
    }

    /** Reads the kept cells of a row; how many there are, 0 where all its cells are empty. */
    private int keep(byte[] bytes, int line, boolean ended) throws InputException {
        int kept = 0;
        int place = 0;
        boolean filled = false;
        do {
            boolean empty = splitter.from() == splitter.to();
            filled |= !empty;
            int column = place < keptBy.length ? keptBy[place] : -1;
            if (column < 0 && !empty && place >= plan.cells()) {
                throw faults.tooLong(line);
            }
            if (column >= 0) {
                read(bytes, column, empty, line, ended);
                kept++;
            }
            place++;
        } while (splitter.next());
        return filled ? kept : 0;
    }

    private void read(byte[] bytes, int column, boolean empty, int line, boolean ended) throws InputException {
        if (!empty && reader.read(bytes, splitter.from(), splitter.to())) {
            row[column] = reader.value();
            timeDigits = column == plan.time() ? Math.max(timeDigits, reader.digits()) : timeDigits;
            return;
        }
        row[column] = Double.NaN;
        if (!empty) {
            InputException fault = faults.notANumber(bytes, splitter.from(), splitter.to(), line, column);
            if (ended) {
                throw fault;
            }
            putAside(fault, line);
        }
    }

    private void takeTime(int line) throws InputException {
        if (plan.time() < 0) {
            return;
        }
        double time = row[plan.time()];
        if (!(time >= lastTime)) { // NaN lands here too
            throw Double.isNaN(time) ? faults.noTime(line) : faults.timeRunsBack(line, lastTime, time);
        }
        lastTime = time;
    }

    private boolean isMark(byte[] bytes) {
        return GapMarks.isMark(bytes, splitter.from(), splitter.to());
    }

    /** A fault in the last row only means that the file was cut; any row after it makes it a fault. */
    private void putAside(InputException fault, int line) {
        incomplete = fault;
        incompleteLine = line;
    }
}
