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
        double[] cosines = new double[fit.count() + 1];
        double[] sines = new double[fit.count() + 1];
        for (int k = 1; k <= fit.count(); k++) {
            cosines[k] = fit.cosine(k);
            sines[k] = fit.sine(k);
        }
        for (int i = 0; i <= QUARTER; i++) {
            double[] even = sums(cosines, sines, i, 2);
            double[] odd = sums(cosines, sines, i, 1);
            spread(values, i, new double[] {even[0], even[1], odd[0], odd[1]}, 1, fit.mean());
            spread(slopes, i, new double[] {even[2], even[3], odd[2], odd[3]}, 2 * Math.PI / SIZE, 0);
        }
    }

    /** Sums over every second harmonic at a place: cosines, sines, and those of the slope. */
    private static double[] sums(double[] cosines, double[] sines, int place, int first) {
        double ofCosines = 0;
        double ofSines = 0;
        double slopeOfSines = 0;
        double slopeOfCosines = 0;
        for (int k = first; k < cosines.length; k += 2) {
            int at = k * place & (SIZE - 1);
            double cos = COS[at];
            double sin = SIN[at];
            ofCosines += cosines[k] * cos;
            ofSines += sines[k] * sin;
            slopeOfSines += k * sines[k] * cos;
            slopeOfCosines -= k * cosines[k] * sin;
        }
        return new double[] {ofCosines, ofSines, slopeOfSines, slopeOfCosines};
    }

    /** Four places a quarter apart or mirrored, from the sums over even cosines, even sines, odd cosines and odd sines at one. */
    private static void spread(double[] table, int i, double[] sums, double scale, double offset) {
        table[i] = offset + scale * (sums[0] + sums[1] + sums[2] + sums[3]);
        table[HALF - i] = offset + scale * (sums[0] - sums[1] - sums[2] + sums[3]);
        table[HALF + i] = offset + scale * (sums[0] + sums[1] - sums[2] - sums[3]);
        table[SIZE - i] = offset + scale * (sums[0] - sums[1] + sums[2] - sums[3]);
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
