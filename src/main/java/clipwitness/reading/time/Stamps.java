package clipwitness.reading.time;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Time stamps, or any other axis, and the least-squares line through them: t(k) = start + k interval for row k from 0.
 *
 * <p>With k counted from the middle row, interval = 12 sum(k t) / (n (n² - 1)). Stamps rounded to a quantum q, each off by up to
 * q/2, leave the interval with an error far below q/n, where a single difference is off by up to q.
 *
 * @param start    value of the line at the first row
 * @param interval slope of the line, a row
 * @param worst    largest distance of a stamp from the line
 * @param quantum  unit of the last digit that the stamps are written with
 * @param repeats  how many stamps equal the one before
 * @param paired   whether the stamps come in pairs of two equal ones and never otherwise
 * @param widest   the widest step from one stamp to the next
 * @param size     number of stamps
 */
public record Stamps(
        double start,
        double interval,
        double worst,
        double quantum,
        int repeats,
        boolean paired,
        Step widest,
        int size) {
    /**
     * A step from one stamp to the next.
     *
     * @param row  how many rows there are up to it
     * @param from stamp before it
     * @param to   stamp after it
     */
    record Step(int row, double from, double to) {}

    /** A stamp computed in single precision is off by up to 2^-24 of its size, and its line by as much again. */
    private static final double SINGLE_PRECISION = 0x1p-23;
    /** Deviations under a tenth of an interval move no figure by more than the noise. */
    private static final double EVEN_ENOUGH = 0.1;

    private static final double WHOLE = 1e-6;
    /** No line at all. */
    static final Stamps NONE = new Stamps(0, 0, Double.POSITIVE_INFINITY, 0, 0, false, new Step(0, 0, 0), 0);

    /**
     * Fits the line.
     *
     * @param t      two stamps or more, none of them NaN
     * @param digits most significant digits that one is written with
     */
    public static Stamps of(double[] t, int digits) {
        int n = t.length;
        double middle = (n - 1) / 2.0;
        double sum = 0;
        double moment = 0;
        double largest = 0;
        int repeats = 0;
        int widest = 1;
        boolean paired = n > 3; // two pairs at least
        for (int k = 0; k < n; k++) {
            double relative = t[k] - t[0];
            sum += relative;
            moment += (k - middle) * relative;
            largest = Math.max(largest, Math.abs(t[k]));
            boolean repeated = k > 0 && t[k] == t[k - 1];
            widest = k > 1 && t[k] - t[k - 1] > t[widest] - t[widest - 1] ? k : widest;
            repeats += repeated ? 1 : 0;
            paired &= k == 0 || repeated == (k % 2 == 1);
        }
        double interval = 12 * moment / ((double) n * ((double) n * n - 1));
        double start = t[0] + sum / n - middle * interval;
        double worst = worst(t, start, interval);
        double nearZero = Math.abs(start) < 1e-9 * Math.abs(interval) ? 0 : start;
        Step step = new Step(widest, t[widest - 1], t[widest]);
        double quantum = quantum(largest, digits);
        return new Stamps(rounded(nearZero), rounded(interval), worst, quantum, repeats, paired, step, n);
    }

    /** Whether there is a line and it rises. */
    public boolean rises() {
        return interval > 0;
    }

    /** Whether they are whole numbers that rise by a whole step. */
    public boolean counts() {
        return Math.rint(interval) >= 1 && worst < WHOLE && Math.abs(start - Math.rint(start)) < WHOLE;
    }

    /** Whether the stamps lie on the line but for their rounding. */
    public boolean even() {
        return worst <= allowed();
    }

    /** How far a stamp of an even record may lie from the line. */
    double allowed() {
        double largest = Math.max(Math.abs(start), Math.abs(start + interval * (size - 1)));
        return Math.max(Math.max(0.55 * quantum, SINGLE_PRECISION * largest), EVEN_ENOUGH * Math.abs(interval));
    }

    /** Two rows a time stamp, the stamps further apart than their last digit: the record of an envelope. */
    boolean envelope() {
        return paired && 2 * interval > 1.5 * quantum;
    }

    /** Relative uncertainty of the interval that the rounding leaves. */
    double resolution() {
        return quantum / Math.abs(interval * (size - 1));
    }

    private static double worst(double[] t, double start, double interval) {
        double worst = 0;
        for (int k = 0; k < t.length; k++) {
            worst = Math.max(worst, Math.abs(t[k] - start - k * interval));
        }
        return worst;
    }

    /** To twelve digits, so that the last bits of the sums do not make two intervals out of one. */
    private static double rounded(double value) {
        return new BigDecimal(value).round(new MathContext(12)).doubleValue();
    }

    private static double quantum(double largest, int digits) {
        return largest == 0 ? 0 : Math.pow(10, Math.floor(Math.log10(largest)) + 1 - digits);
    }
}
