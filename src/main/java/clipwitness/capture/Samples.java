package clipwitness.capture;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * Sampled values, oldest first: copied in, never handed out, compared by content. A gap (an overflow mark or an empty cell of the
 * export) is NaN; whoever measures must leave gaps out. Infinite values are refused.
 */
public final class Samples {
    private final double[] values;
    private final int gaps;

    private Samples(double[] values) {
        this.values = values;
        int missing = 0;
        for (double v : values) {
            if (Double.isInfinite(v)) {
                throw new IllegalArgumentException("samples must be finite or gaps but one is " + v);
            }
            missing += Double.isNaN(v) ? 1 : 0;
        }
        this.gaps = missing;
    }

    /** Samples with these values; NaN marks a gap. */
    public static Samples of(double... values) {
        return new Samples(values.clone());
    }

    /**
     * The first values of an array, copied once.
     *
     * @param values at least {@code count} values
     * @param count  number of samples
     */
    public static Samples of(double[] values, int count) {
        return new Samples(Arrays.copyOf(values, count));
    }

    /** Number of samples, gaps included. */
    public int size() {
        return values.length;
    }

    /** Number of gaps. */
    public int gaps() {
        return gaps;
    }

    /** Sample at an index from 0; NaN for a gap. */
    public double at(int index) {
        return values[index];
    }

    /** A copy of the values. */
    public double[] toArray() {
        return values.clone();
    }

    /** Samples from one index up to, not including, another. */
    public Samples slice(int from, int to) {
        return new Samples(Arrays.copyOfRange(values, from, to));
    }

    /** Each sample through a function; gaps stay gaps. */
    public Samples map(DoubleUnaryOperator function) {
        double[] mapped = new double[values.length];
        for (int i = 0; i < mapped.length; i++) {
            mapped[i] = Double.isNaN(values[i]) ? Double.NaN : function.applyAsDouble(values[i]);
        }
        return new Samples(mapped);
    }

    /** Smallest value. @throws IllegalArgumentException if there is none */
    public double minimum() {
        return extreme(1);
    }

    /** Largest value. @throws IllegalArgumentException if there is none */
    public double maximum() {
        return -extreme(-1);
    }

    private double extreme(int sign) {
        double least = Double.POSITIVE_INFINITY;
        for (double v : values) {
            if (sign * v < least) {
                least = sign * v;
            }
        }
        if (least == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException("no sample has a value");
        }
        return least;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Samples that && Arrays.equals(values, that.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return "Samples[" + values.length + ", gaps " + gaps + "]";
    }
}
