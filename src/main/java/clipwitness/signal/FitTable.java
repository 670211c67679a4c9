package clipwitness.signal;

/**
 * One period of a fit tabulated with its derivative, so that millions of values cost no sine: cubic Hermite interpolation, off by
 * under 2e-7 of the amplitude of harmonic 60 and by 2e-9 of that of harmonic 20.
 */
final class FitTable {
    private static final int SIZE = 4096;
    private static final int HALF = SIZE / 2;
    private static final int QUARTER = SIZE / 4;
    private static final double[] COS = new double[SIZE];
    private static final double[] SIN = new double[SIZE];

    static {
        for (int i = 0; i < SIZE; i++) {
            COS[i] = Math.cos(2 * Math.PI * i / SIZE);
            SIN[i] = Math.sin(2 * Math.PI * i / SIZE);
        }
    }

    private final double[] values = new double[SIZE + 1];
    private final double[] slopes = new double[SIZE + 1];

    FitTable(HarmonicFit fit) {
        double[] even = new double[4 * (QUARTER + 1)];
        double[] odd = new double[4 * (QUARTER + 1)];
        for (int k = 1; k <= fit.count(); k++) {
            if (fit.cosine(k) != 0 || fit.sine(k) != 0) {
                add(k % 2 == 0 ? even : odd, k, fit.cosine(k), fit.sine(k));
            }
        }
        for (int i = 0; i <= QUARTER; i++) {
            spread(values, i, even, odd, 4 * i, 1, fit.mean());
            spread(slopes, i, even, odd, 4 * i + 2, 2 * Math.PI / SIZE, 0);
        }
    }

    /** The table of a fit whose harmonics differ from those of a tabulated one. */
    FitTable plus(HarmonicFit change) {
        FitTable sum = new FitTable(change);
        for (int i = 0; i <= SIZE; i++) {
            sum.values[i] += values[i];
            sum.slopes[i] += slopes[i];
        }
        return sum;
    }

    /** Adds a harmonic to sums at each place of a quarter: of cosines, of sines, and of those of the slope. */
    private static void add(double[] sums, int k, double cosine, double sine) {
        double slopeOfSine = k * sine;
        double slopeOfCosine = -k * cosine;
        for (int i = 0, at = 0; i < sums.length; i += 4) {
            double cos = COS[at];
            double sin = SIN[at];
            sums[i] += cosine * cos;
            sums[i + 1] += sine * sin;
            sums[i + 2] += slopeOfSine * cos;
            sums[i + 3] += slopeOfCosine * sin;
            at = at + k & (SIZE - 1);
        }
    }

    /** Four places a quarter apart or mirrored, from the sums over even and odd cosines and sines at one. */
    private static void spread(
            double[] table, int i, double[] even, double[] odd, int at, double scale, double offset) {
        double cosines = even[at] + odd[at];
        double sines = even[at + 1] + odd[at + 1];
        double turnedCosines = even[at] - odd[at];
        double turnedSines = even[at + 1] - odd[at + 1];
        table[i] = offset + scale * (cosines + sines);
        table[HALF - i] = offset + scale * (turnedCosines - turnedSines);
        table[HALF + i] = offset + scale * (turnedCosines + turnedSines);
        table[SIZE - i] = offset + scale * (cosines - sines);
    }

    /**
     * Value of the fit.
     *
     * @param cycles time in cycles from the middle of the record, 0 to 1
     */
    double at(double cycles) {
        double place = cycles * SIZE;
        int i = (int) Math.min(place, SIZE - 1.0);
        double t = place - i;
        double rise = values[i + 1] - values[i];
        double c = slopes[i] - rise;
        double d = rise - slopes[i + 1];
        return values[i] + t * rise + t * (1 - t) * ((1 - t) * c + t * d);
    }
}
