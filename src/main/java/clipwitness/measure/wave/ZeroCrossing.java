package clipwitness.measure.wave;

import clipwitness.capture.Samples;
import java.util.Optional;

/**
 * Where a cycle goes through zero beside its upper peak: on a parabola by least squares through the bins between 15 % of the smaller
 * peak above zero and 15 % of it below, and where these are fewer than four, the ones beside them. Behind filters the edges of a clipped wave are bent: a straight line, and it is one where there are
 * fewer than four bins in all, would put the crossing beside itself by more than the noise does.
 *
 * @param place   in bins
 * @param slope   of the parabola at that place, a bin; its sign is the way of the cycle
 * @param from    first bin of the parabola
 * @param weights share of each of its bins in the value at that place
 */
record ZeroCrossing(double place, double slope, int from, Samples weights) {
    private static final double SHARE_OF_PEAK = 0.15;
    private static final int FEWEST_FOR_A_BEND = 4;

    /**
     * The crossing next to a peak; empty where the cycle does not go through zero.
     *
     * @param swing   a cycle without its mean
     * @param top     bin of the upper peak
     * @param side    1 for the crossing after it, -1 for the one before
     * @param smaller the smaller of both peaks, above 0
     */
    static Optional<ZeroCrossing> of(double[] swing, int top, int side, double smaller) {
        int bins = swing.length;
        int inner = 0;
        while (inner < bins && at(swing, top + side * (inner + 1)) >= SHARE_OF_PEAK * smaller) {
            inner++;
        }
        int outer = inner + 1;
        while (outer < bins && at(swing, top + side * outer) > -SHARE_OF_PEAK * smaller) {
            outer++;
        }
        if (outer >= bins) {
            return Optional.empty();
        }
        int spare = outer - inner + 1 - FEWEST_FOR_A_BEND;
        boolean innerFarther = Math.abs(at(swing, top + side * inner)) > Math.abs(at(swing, top + side * outer));
        inner += spare > 1 || (spare == 1 && innerFarther) ? 1 : 0;
        outer -= spare > 1 || (spare == 1 && !innerFarther) ? 1 : 0;
        int from = Math.min(top + side * inner, top + side * outer);
        Moments moments = new Moments(outer - inner + 1);
        for (int i = 0; i < moments.count; i++) {
            moments.add(i, at(swing, from + i));
        }
        double middle = (moments.count - 1) / 2.0;
        double[] curve = moments.curve();
        double offset = root(curve);
        double slope = curve[1] + 2 * curve[2] * offset;
        return side * slope < 0 && Math.abs(offset) <= middle
                ? Optional.of(
                        new ZeroCrossing(from + middle + offset, slope, from, Samples.adopted(moments.weights(offset))))
                : Optional.empty();
    }

    /** The zero of a + b u + c u² on the side of the line a + b u; NaN where there is none. */
    private static double root(double[] curve) {
        double square = curve[1] * curve[1] - 4 * curve[0] * curve[2];
        return -2 * curve[0] / (curve[1] + Math.copySign(Math.sqrt(square), curve[1]));
    }

    private static double at(double[] swing, int bin) {
        return swing[Math.floorMod(bin, swing.length)];
    }

    /** Last bin of the parabola. */
    int to() {
        return from + weights.size() - 1;
    }

    /** By how many bins the place moves for a unit more in one bin. */
    double sensitivity(int bin) {
        return bin < from || bin > to() ? 0 : -weights.at(bin - from) / slope;
    }

    /** Sums over evenly spaced bins, counted from their middle. */
    private static final class Moments {
        private final int count;
        private final boolean bent;
        private final double squares;
        private final double fourths;
        private double sum;
        private double first;
        private double second;

        Moments(int count) {
            this.count = count;
            this.bent = count >= FEWEST_FOR_A_BEND;
            double n = count;
            squares = n * (n * n - 1) / 12;
            fourths = squares * (3 * n * n - 7) / 20;
        }

        private double offset(int place) {
            return place - (count - 1) / 2.0;
        }

        void add(int place, double value) {
            double u = offset(place);
            sum += value;
            first += u * value;
            second += u * u * value;
        }

        private double determinant() {
            return count * fourths - squares * squares;
        }

        /** Coefficients of the least-squares parabola, or line. */
        double[] curve() {
            return bent
                    ? new double[] {
                        (fourths * sum - squares * second) / determinant(),
                        first / squares,
                        (count * second - squares * sum) / determinant()
                    }
                    : new double[] {sum / count, first / squares, 0};
        }

        /** Share of each bin in the value of the curve at a distance from the middle. */
        double[] weights(double at) {
            double[] weights = new double[count];
            for (int i = 0; i < count; i++) {
                double u = offset(i);
                double even = bent
                        ? (fourths - squares * u * u + at * at * (count * u * u - squares)) / determinant()
                        : 1.0 / count;
                weights[i] = even + at * u / squares;
            }
            return weights;
        }
    }
}
