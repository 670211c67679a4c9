package clipwitness.capture;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * Sampled values, oldest first: copied in or taken over, never handed out, compared by content. A gap (an overflow mark or an empty cell of the
 * export) is NaN; whoever measures must leave gaps out. Infinite values are refused.
 */
public final class Samples {
    private final double[] values;
    private final int gaps;
    private final double least;
    private final double greatest;

    private Samples(double[] values) {
        this.values = values;
        int missing = 0;
        double min = Double.POSITIVE_INFINITY;
        double max = Double.NEGATIVE_INFINITY;
        for (double v : values) {
            missing += Double.isNaN(v) ? 1 : 0;
            min = v < min ? v : min; // false for NaN
            max = v > max ? v : max;
        }
        boolean any = missing < values.length;
        if (any && (min == Double.NEGATIVE_INFINITY || max == Double.POSITIVE_INFINITY)) {
            double infinite = max == Double.POSITIVE_INFINITY ? max : min;
            throw new IllegalArgumentException("samples must be finite or gaps but one is " + infinite);
        }
        this.gaps = missing;
        this.least = min;
        this.greatest = max;
    }

    /** Samples with these values; NaN marks a gap. */
    public static Samples of(double... values) {
        return new Samples(values.clone());
    }

    /**
     * Samples in an array that nobody else holds or writes to from now on: a long record is not copied.
     *
     * @param values the values; NaN marks a gap
     */
    public static Samples adopted(double[] values) {
        return new Samples(values);
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
        return extreme(least);
    }

    /** Largest value. @throws IllegalArgumentException if there is none */
    public double maximum() {
        return extreme(greatest);
    }

    private double extreme(double value) {
        if (gaps == values.length) {
            throw new IllegalArgumentException("no sample has a value");
        }
        return value;
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
