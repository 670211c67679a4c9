package clipwitness.signal;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.DoubleUnaryOperator;

/** Points in ascending order of x, each with a weight: the number of samples that it stands for, so that its variance is a sample's over the weight. */
public final class WeightedPoints {
    private static final double SAME_PLACE = 1e-4;

    private final double[] x;
    private final double[] y;
    private final double[] weights;

    WeightedPoints(double[] x, double[] y, double[] weights) {
        this.x = x;
        this.y = y;
        this.weights = weights;
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

    /** The same points with other abscissae and ordinates, in the order of the new abscissae. */
    public WeightedPoints mapped(DoubleUnaryOperator ofX, DoubleUnaryOperator ofY) {
        double[] newX = new double[x.length];
        Integer[] order = new Integer[x.length];
        for (int i = 0; i < x.length; i++) {
            newX[i] = ofX.applyAsDouble(x[i]);
            order[i] = i;
        }
        Arrays.sort(order, Comparator.comparingDouble(i -> newX[i]));
        double[] sortedX = new double[x.length];
        double[] sortedY = new double[x.length];
        double[] sortedWeights = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            sortedX[i] = newX[order[i]];
            sortedY[i] = ofY.applyAsDouble(y[order[i]]);
            sortedWeights[i] = weights[order[i]];
        }
        return new WeightedPoints(sortedX, sortedY, sortedWeights);
    }

    /**
     * Number of places from low to high that have a point. Points nearer to one another than a ten-thousandth of the whole range stand in
     * one place: in a record of a whole number of samples a period every period falls on the same few places, and no more can be fitted.
     */
    public int countBetween(double low, double high) {
        int end = firstAbove(high, true);
        double apart = x.length == 0 ? 0 : SAME_PLACE * (x[x.length - 1] - x[0]);
        double last = Double.NEGATIVE_INFINITY;
        int places = 0;
        for (int i = firstAbove(low, false); i < end; i++) {
            if (x[i] - last > apart) {
                places++;
                last = x[i];
            }
        }
        return places;
    }

    /** Number of places that have a point. */
    public int places() {
        return countBetween(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** The points with an abscissa from low to high. */
    public WeightedPoints between(double low, double high) {
        int from = firstAbove(low, false);
        int to = Math.max(from, firstAbove(high, true));
        return new WeightedPoints(
                Arrays.copyOfRange(x, from, to),
                Arrays.copyOfRange(y, from, to),
                Arrays.copyOfRange(weights, from, to));
    }

    /** Index of the first abscissa above a bound, or on it where the bound itself does not count as passed. */
    private int firstAbove(double bound, boolean strictly) {
        int low = 0;
        int high = x.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (strictly ? x[middle] > bound : x[middle] >= bound) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /** Every second point, from the first (parity 0) or the second (parity 1): the two halves share no sample. */
    public WeightedPoints half(int parity) {
        int count = (x.length + 1 - parity) / 2;
        double[] halfX = new double[count];
        double[] halfY = new double[count];
        double[] halfWeights = new double[count];
        for (int i = 0; i < count; i++) {
            halfX[i] = x[2 * i + parity];
            halfY[i] = y[2 * i + parity];
            halfWeights[i] = weights[2 * i + parity];
        }
        return new WeightedPoints(halfX, halfY, halfWeights);
    }
}
