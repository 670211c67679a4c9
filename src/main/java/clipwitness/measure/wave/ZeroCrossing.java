package clipwitness.measure.wave;

import java.util.Optional;

/**
 * Where a cycle goes through zero beside its upper peak: on a straight line by least squares through the bins from a tenth of the smaller
 * peak above zero to a tenth of it below.
 *
 * @param place in bins
 * @param slope of the line, a bin; its sign is the way of the cycle
 * @param from  first bin of the line
 * @param to    last bin of the line
 */
record ZeroCrossing(double place, double slope, int from, int to) {
    private static final double SHARE_OF_PEAK = 0.1;

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
        int from = Math.min(top + side * inner, top + side * outer);
        int to = from + outer - inner;
        double middle = (from + to) / 2.0;
        double mean = 0;
        double product = 0;
        double spread = 0;
        for (int i = from; i <= to; i++) {
            mean += at(swing, i) / (to - from + 1);
            product += (i - middle) * at(swing, i);
            spread += (i - middle) * (i - middle);
        }
        double slope = product / spread;
        double place = middle - mean / slope;
        return side * slope < 0 && place >= from && place <= to
                ? Optional.of(new ZeroCrossing(place, slope, from, to))
                : Optional.empty();
    }

    private static double at(double[] swing, int bin) {
        return swing[Math.floorMod(bin, swing.length)];
    }

    /** By how many bins the place moves for a unit more in one bin. */
    double sensitivity(int bin) {
        if (bin < from || bin > to) {
            return 0;
        }
        double count = to - from + 1;
        double middle = (from + to) / 2.0;
        double spread = count * (count * count - 1) / 12;
        return -(1 / count + (place - middle) * (bin - middle) / spread) / slope;
    }
}
