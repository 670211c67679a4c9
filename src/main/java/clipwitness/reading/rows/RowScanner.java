package clipwitness.reading.rows;

import clipwitness.fault.InputException;
import clipwitness.reading.file.Notes;
import clipwitness.reading.number.CellReader;
import clipwitness.reading.number.CellSplitter;
import clipwitness.reading.number.GapMarks;
import clipwitness.reason.Argument;
import clipwitness.reason.LayoutRemark;
import java.nio.charset.Charset;
import java.util.Arrays;
import java.util.List;

/**
 * Reads rows of bytes into a table, cell by cell, without a text for any of them. Plain rows go by a shorter way; what is read, and
 * what is refused, is the same by both.
 */
final class RowScanner {
    private final RowPlan plan;
    private final RowFaults faults;
    private final int[] keptBy;
    private final int lastAxis;
    private final boolean[] axis;
    private final CellSplitter splitter;
    private final CellReader reader;
    private final double[] row;
    private final PlainRow plainRow;
    private final AlikeRows alikeRows;
    private final CutEnd cutEnd = new CutEnd();
    private final NumberTable table;
    private final Tail tail = new Tail();
    private final BareRows bareRows = new BareRows();
    private final List<byte[]> repeats;

    private int timeDigits;
    private double firstTime = Double.POSITIVE_INFINITY;
    private double lastTime = Double.NEGATIVE_INFINITY;
    private boolean unreadable;
    private boolean valued;
    private int sweeps;
    private boolean parted;
    private int stretches = 1;

    RowScanner(String file, Charset charset, byte lineEnd, RowPlan plan, NumberTable table) {
        this.plan = plan;
        this.faults = new RowFaults(file, plan);
        this.keptBy = plan.keptBy();
        this.lastAxis = plan.axes().stream().max(Integer::compare).orElse(-1);
        this.axis = new boolean[plan.places().size()];
        plan.axes().forEach(a -> axis[a] = true);
        this.splitter = new CellSplitter(plan.dialect().delimiter());
        this.reader = plan.dialect().reader();
        this.row = new double[plan.places().size()];
        this.plainRow = new PlainRow(plan, lineEnd, row);
        this.alikeRows = new AlikeRows(plan, table);
        this.table = table;
        this.repeats = plan.repeats().stream().map(r -> r.getBytes(charset)).toList();
        plainRow.except(repeats);
    }

    /** The rows read so far. */
    NumberTable table() {
        return table;
    }

    /** Number of stretches into which blank lines divide the rows. */
    int stretches() {
        return stretches;
    }

    /** Number of rows without values that were left out in front of the others. */
    int skipped() {
        return bareRows.skipped();
    }

    /** Passes over a blank line. */
    void blankLine() {
        parted = true;
    }

    private void add() throws InputException {
        seeStretch();
        table.add(row);
    }

    private void seeStretch() {
        stretches += parted ? 1 : 0;
        parted = false;
    }

    /** Most significant digits that a time stamp was written with. */
    int timeDigits() {
        long plain = Math.max(alikeRows.largestTime(), plainRow.largestTime());
        return Math.max(timeDigits, plain == 0 ? 0 : Long.toString(plain).length());
    }

    /**
     * Goes on behind the rows that another has read.
     *
     * @return false, with nothing done, where its rows can be judged only after those before them
     */
    boolean absorb(RowScanner next) throws InputException {
        boolean mistaken = bareRows.mistakenBy(next.bareRows, table.rows());
        if (mistaken || !next.tail.none() || !(next.firstTime >= lastTime)) {
            return false;
        }
        bareRows.see(next.bareRows, table.rows());
        table.add(next.table);
        timeDigits = Math.max(timeDigits, next.timeDigits());
        lastTime = Math.max(lastTime, next.lastTime);
        cutEnd.see(next.cutEnd);
        sweeps += next.sweeps;
        stretches += next.stretches - 1 + (parted && next.table.rows() > 0 ? 1 : 0);
        parted = next.parted || (parted && next.table.rows() == 0);
        return true;
    }

    /** Settles the end of the file and notes what was left out there. */
    void end(Notes notes) {
        tail.end(table, notes);
        bareRows.end(table, notes);
        if (sweeps > 0) {
            notes.evidence(LayoutRemark.HEADER_AGAIN, Argument.count(sweeps));
        }
    }

    /**
     * Reads plain rows into the table: several that are written alike, or one.
     *
     * @param bytes with zeros behind what is filled, see {@link PlainRow#SLACK}
     * @param from  start of a row
     * @param limit place at or beyond which no row is read that starts there
     * @return place after the last of them; -1, with nothing done, where no plain row stands there
     */
    int plain(byte[] bytes, int from, int limit) throws InputException {
        int before = table.rows();
        int next = alikeRows.read(bytes, from, limit, lastTime);
        if (next > from) {
            tail.wholeRow();
            firstTime = Math.min(firstTime, alikeRows.firstTime());
            lastTime = alikeRows.lastTime();
            cutEnd.see(alikeRows.afterMark(), table.rows() - before);
            seeStretch();
            return next;
        }
        return plainRow(bytes, from);
    }

    private int plainRow(byte[] bytes, int from) throws InputException {
        int next = plainRow.read(bytes, from);
        boolean timed = plan.time() >= 0;
        if (next < 0 || (timed && !(row[plan.time()] >= lastTime))) {
            return -1;
        }
        alikeRows.learn(bytes, from, next);
        tail.wholeRow();
        if (timed) {
            firstTime = Math.min(firstTime, row[plan.time()]);
            lastTime = row[plan.time()];
            plainRow.taken();
        }
        cutEnd.see(plainRow.afterMark(), 1);
        add();
        return next;
    }

    /**
     * Reads one line into the table; blank lines and comments are passed over.
     *
     * @param line  number of the line
     * @param ended whether a line end follows it
     */
    void scan(byte[] bytes, int from, int to, int line, boolean ended) throws InputException {
        splitter.row(bytes, from, to);
        if (isRepeated(bytes, from, to)) {
            sweeps++;
            return;
        }
        if (!splitter.next() || (bytes[splitter.from()] == '#' && !isMark(bytes))) {
            return;
        }
        if (isText(bytes, from, to)) {
            tail.textLine(faults.text(bytes, splitter.from(), splitter.to(), line));
            return;
        }
        int kept = keep(bytes, line, ended);
        if (kept == 0) {
            addEmpty();
            return;
        }
        boolean whole = kept == row.length;
        boolean ends = !ended && (unreadable || !whole || cutEnd.isCut(reader));
        boolean placed = kept > lastAxis;
        boolean early = placed && !valued && bareRows.all(table.rows());
        if (!valued) {
            bareRows.see(table.rows());
        }
        if (whole && !ends) {
            seeWhole();
        } else if (early && ended) {
            Arrays.fill(row, kept, row.length, Double.NaN);
            bareRows.seeShort();
        } else {
            Arrays.fill(row, kept, row.length, Double.NaN);
            tail.shortRow(line, ends || !placed, faults.tooShort(line, kept));
        }
        if (plan.time() >= 0 && plan.time() < kept && !ends) {
            takeTime(line);
        }
        add();
    }

    /** Cells without anything in them are a sample without a value where nothing but their order places the rows. */
    private void addEmpty() throws InputException {
        if (plan.axes().isEmpty()) {
            Arrays.fill(row, Double.NaN);
            bareRows.see(table.rows());
            add();
        }
    }

    private void seeWhole() throws InputException {
        if (valued) {
            tail.wholeRow();
        }
        if (!Double.isNaN(row[row.length - 1])) {
            cutEnd.see(reader.afterMark(), 1);
        }
    }

    /** Reads the kept cells of a row; how many there are, 0 where all its cells are empty. */
    private int keep(byte[] bytes, int line, boolean ended) throws InputException {
        int kept = 0;
        int place = 0;
        boolean filled = false;
        valued = false;
        do {
            boolean empty = splitter.from() == splitter.to();
            filled |= !empty;
            int column = place < keptBy.length ? keptBy[place] : -1;
            if (column < 0 && !empty && place >= plan.cells()) {
                throw faults.tooLong(line);
            }
            if (column >= 0) {
                read(bytes, column, empty, line, ended);
                valued = valued || isValue(bytes, column, empty);
                kept++;
            }
            place++;
        } while (splitter.next());
        return filled ? kept : 0;
    }

    private boolean isValue(byte[] bytes, int column, boolean empty) {
        return !axis[column] && (!Double.isNaN(row[column]) || (!empty && !isAbsent(bytes)));
    }

    private void read(byte[] bytes, int column, boolean empty, int line, boolean ended) throws InputException {
        if (!empty && reader.read(bytes, splitter.from(), splitter.to())) {
            if (!plan.within().get(column).equals(reader.unit())
                    && Math.abs(reader.value()) > 0) { // zero is zero in any unit
                throw faults.otherUnit(bytes, splitter.from(), splitter.to(), line, column);
            }
            row[column] = reader.value();
            timeDigits = column == plan.time() ? Math.max(timeDigits, reader.digits()) : timeDigits;
            return;
        }
        row[column] = Double.NaN;
        if (!empty) {
            if (ended || !CutEnd.mayBeNumber(bytes, splitter.from(), splitter.to())) {
                throw faults.notANumber(bytes, splitter.from(), splitter.to(), line, column);
            }
            unreadable = true;
        }
    }

    private void takeTime(int line) throws InputException {
        double time = row[plan.time()];
        if (!(time >= lastTime)) { // NaN lands here too
            throw Double.isNaN(time) ? faults.noTime(line) : faults.timeRunsBack(line, lastTime, time);
        }
        firstTime = Math.min(firstTime, time);
        lastTime = time;
    }

    /** Whether the line starts with a word and holds no number at all; the splitter stands on its first cell before and after. */
    private boolean isText(byte[] bytes, int from, int to) {
        boolean word = Character.isLetter(bytes[splitter.from()]) && !isMark(bytes);
        if (!word) {
            return false;
        }
        boolean number = false;
        while (splitter.next()) {
            number |= reader.read(bytes, splitter.from(), splitter.to());
        }
        splitter.row(bytes, from, to);
        splitter.next();
        return !number;
    }

    private boolean isRepeated(byte[] bytes, int from, int to) {
        for (byte[] repeat : repeats) {
            if (Arrays.equals(bytes, from, to, repeat, 0, repeat.length)) {
                return true;
            }
        }
        return false;
    }

    private boolean isAbsent(byte[] bytes) {
        return GapMarks.isAbsent(bytes, splitter.from(), splitter.to());
    }

    private boolean isMark(byte[] bytes) {
        return GapMarks.isMark(bytes, splitter.from(), splitter.to());
    }
}
