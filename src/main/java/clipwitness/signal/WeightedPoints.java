package clipwitness.signal;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;

/**
 * Points in ascending order of x, each with a weight: the number of samples that it represents, so that its variance is a sample's over the
 * weight.
 */
public final class WeightedPoints {
    private static final double SAME_PLACE = 1e-4;
    private static final int INDEX_BITS = 12;

    private final double[] x;
    private final double[] y;
    private final double[] weights;

    WeightedPoints(double[] x, double[] y, double[] weights) {
        this.x = x;
        this.y = y;
        this.weights = weights;
    }

    /** The same points with other ordinates, one a point. */
    WeightedPoints withOrdinates(double[] ordinates) {
        return new WeightedPoints(x, ordinates, weights);
    }

    /** Number of points. */
    public int size() {
        return x.length;
    }

    /** Abscissa of a point. */
    public double x(int index) {
        return x[index];
    }

    /** Ordinate of a point. */
    public double y(int index) {
        return y[index];
    }

    /** Weight of a point. */
    public double weight(int index) {
        return weights[index];
    }

    /** The same points in the order of new abscissae. */
    public WeightedPoints over(DoubleUnaryOperator newX) {
        double[] unsorted = mapped(newX);
        return inOrder(unsorted, order(unsorted));
    }

    private WeightedPoints inOrder(double[] unsorted, int[] order) {
        return new WeightedPoints(picked(unsorted, order), picked(y, order), picked(weights, order));
    }

    /**
     * The same with what changes places kept, for many points over the same abscissae with the same weights: their order is found once.
     *
     * @param newX the new abscissae
     */
    public UnaryOperator<WeightedPoints> reordering(DoubleUnaryOperator newX) {
        double[] unsorted = mapped(newX);
        int[] order = order(unsorted);
        WeightedPoints first = inOrder(unsorted, order);
        return others -> first.withOrdinates(picked(others.y, order));
    }

    /** Order of ascending values; values equal to 12 digits may stand either way. */
    private static int[] order(double[] values) {
        if (values.length >= 1 << INDEX_BITS) {
            throw new IllegalArgumentException("too many points to sort: " + values.length);
        }
        long mask = (1L << INDEX_BITS) - 1;
        long[] keys = new long[values.length];
        for (int i = 0; i < keys.length; i++) {
            long bits = Double.doubleToLongBits(values[i]);
            keys[i] = ((bits ^ ((bits >> 63) & Long.MAX_VALUE)) & ~mask) | i;
        }
        Arrays.sort(keys);
        int[] order = new int[keys.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = (int) (keys[i] & mask);
        }
        return order;
    }

    private double[] mapped(DoubleUnaryOperator newX) {
        double[] mapped = new double[x.length];
        for (int i = 0; i < mapped.length; i++) {
            mapped[i] = newX.applyAsDouble(x[i]);
        }
        return mapped;
    }

    private static double[] picked(double[] values, int[] order) {
        double[] picked = new double[order.length];
        for (int i = 0; i < picked.length; i++) {
            picked[i] = values[order[i]];
        }
        return picked;
    }

    /** Points of a cycle that begins at another phase: those before it follow a cycle later. */
    public WeightedPoints cycleFrom(double phase) {
        double whole = Math.floor(phase);
        int first = indexFrom(phase - whole, false);
        double[] turned = rotated(x, first);
        for (int i = 0; i < turned.length; i++) {
            turned[i] += i < turned.length - first ? whole : whole + 1;
        }
        return new WeightedPoints(turned, rotated(y, first), rotated(weights, first));
    }

    private static double[] rotated(double[] values, int first) {
        double[] turned = new double[values.length];
        System.arraycopy(values, first, turned, 0, values.length - first);
        System.arraycopy(values, 0, turned, values.length - first, first);
        return turned;
    }

    /** The points seen from the other end: both coordinates with the opposite sign. */
    public WeightedPoints mirrored() {
        return new WeightedPoints(backwards(x, -1), backwards(y, -1), backwards(weights, 1));
    }

    private static double[] backwards(double[] values, int sign) {
        double[] turned = new double[values.length];
        for (int i = 0; i < turned.length; i++) {
            turned[i] = sign * values[turned.length - 1 - i];
        }
        return turned;
    }

    /**
     * Whether so many places from low to high have a point. Points nearer to one another than a ten-thousandth of the whole range stand in
     * one place: in a record of a whole number of samples a period every period falls on the same few places, and no more can be fitted.
     */
    public boolean holds(int wanted, double low, double high) {
        int from = indexFrom(low, false);
        int end = indexFrom(high, true);
        return end - from >= wanted && places(wanted, from, end) == wanted;
    }

    /** Whether so many places have a point. */
    public boolean holds(int wanted) {
        return placesUpTo(wanted) == wanted;
    }

    /** Number of places that have a point, as far as it is asked for. */
    public int placesUpTo(int most) {
        return places(most, 0, x.length);
    }

    private int places(int most, int from, int end) {
        double apart = x.length == 0 ? 0 : SAME_PLACE * (x[x.length - 1] - x[0]);
        double last = Double.NEGATIVE_INFINITY;
        int places = 0;
        for (int i = from; i < end && places < most; i++) {
            if (x[i] - last > apart) {
                places++;
                last = x[i];
            }
        }
        return places;
    }

    /** Sum of the weights of the points with an abscissa from low to high. */
    public double weight(double low, double high) {
        int end = indexFrom(high, true);
        double sum = 0;
        for (int i = indexFrom(low, false); i < end; i++) {
            sum += weights[i];
        }
        return sum;
    }

    /** Sum of ordinates times shares, from a point on. */
    public double sum(double[] shares, int first) {
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            sum += shares[i] * y[first + i];
        }
        return sum;
    }

    /** The widest gap from low to high without a point. */
    public double widestGap(double low, double high) {
        double last = low;
        double widest = 0;
        for (int i = indexFrom(low, false); i < indexFrom(high, true); i++) {
            widest = Math.max(widest, x[i] - last);
            last = x[i];
        }
        return Math.max(widest, high - last);
    }

    /** The points with an abscissa from low to high. */
    public WeightedPoints between(double low, double high) {
        int from = indexFrom(low, false);
        return part(from, Math.max(from, indexFrom(high, true)));
    }

    /** The points from an index up to another. */
    WeightedPoints part(int from, int to) {
        return new WeightedPoints(
                Arrays.copyOfRange(x, from, to),
                Arrays.copyOfRange(y, from, to),
                Arrays.copyOfRange(weights, from, to));
    }

    /** Index of the first abscissa on a bound or above, or only above it. */
    int indexFrom(double bound, boolean above) {
        int low = 0;
        int high = x.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            double value = x[middle];
            if (value > bound || (value == bound && !above)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
