package clipwitness.reading.rows;

import clipwitness.fault.InputException;

/**
 * Reads rows that are written like one before them, one after the other, into a table. Knows a few ways in which rows are written, for
 * instance with and without a minus, and learns a new one where those that it learnt have been of use.
 */
final class AlikeRows {
    private static final int SHAPES = 4; // as many as two columns with signs have
    private static final int COST = 16; // rows that learning one costs as much as
    private static final int FIRST_CREDIT = 2 * SHAPES * COST;

    private final RowPlan plan;
    private final NumberTable table;
    private final int time;
    private final RowShape[] shapes = new RowShape[SHAPES];

    private int latest;
    private long credit = FIRST_CREDIT;
    private int afterMark;
    private double firstTime;
    private double lastTime;
    private long largestTime;

    AlikeRows(RowPlan plan, NumberTable table) {
        this.plan = plan;
        this.table = table;
        this.time = plan.time();
    }

    /**
     * Reads rows until one is written otherwise, or its time runs back.
     *
     * @param bytes     with zeros behind what is filled, see {@link PlainRow#SLACK}
     * @param from      start of a row
     * @param limit     place at or beyond which no row is read that starts there
     * @param notBefore earliest time of the first row
     * @return place after the last row; {@code from} where none was read
     */
    int read(byte[] bytes, int from, int limit, double notBefore) throws InputException {
        firstTime = Double.POSITIVE_INFINITY;
        lastTime = notBefore;
        RowShape shape = fitting(bytes, from);
        int next = from;
        boolean fits = shape != null;
        int before = table.rows();
        while (fits && read(shape, bytes, next)) {
            next += shape.length();
            fits = next < limit && shape.fits(bytes, next);
        }
        if (next > from) {
            credit += table.rows() - before;
            afterMark = shape.afterMark();
        }
        return next;
    }

    /** Learns from a row that was read as a plain one how rows may be written. */
    void learn(byte[] bytes, int from, int to) {
        if (credit >= COST) {
            credit -= COST;
            latest = (latest + 1) % SHAPES;
            shapes[latest] = RowShape.of(bytes, from, to, plan).orElse(null);
        }
    }

    /** Of the rows read last: characters of the last number from its decimal mark on, exponent included. */
    int afterMark() {
        return afterMark;
    }

    /** Of the rows read last: time of the first. */
    double firstTime() {
        return firstTime;
    }

    /** Of the rows read last: time of the last. */
    double lastTime() {
        return lastTime;
    }

    /** The digits of a time stamp as a whole number, the largest of all rows read. */
    long largestTime() {
        return largestTime;
    }

    private RowShape fitting(byte[] bytes, int from) {
        for (int i = 0; i < SHAPES; i++) {
            int place = (latest + i) % SHAPES;
            if (shapes[place] != null && shapes[place].fits(bytes, from)) {
                latest = place;
                return shapes[place];
            }
        }
        return null;
    }

    private boolean read(RowShape shape, byte[] bytes, int from) throws InputException {
        table.requireRoom(1);
        long stamp = 0;
        int column = 0;
        while (column < shape.numbers()) {
            NumberPlace number = shape.number(column);
            long mantissa = number.mantissa(bytes, from);
            int power = number.power(bytes, from);
            if (!NumberPlace.isExact(power)) {
                return false;
            }
            table.put(column, number.value(mantissa, power));
            stamp = column == time ? mantissa : stamp;
            column++;
        }
        return time < 0 ? added() : added(table.pending(time), stamp);
    }

    private boolean added(double at, long stamp) {
        if (!(at >= lastTime)) {
            return false;
        }
        firstTime = Math.min(firstTime, at);
        lastTime = at;
        largestTime = Math.max(largestTime, stamp);
        return added();
    }

    private boolean added() {
        table.add();
        return true;
    }
}
