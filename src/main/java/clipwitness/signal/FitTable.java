package clipwitness.signal;

import java.util.Arrays;

/**
 * One period of a fit tabulated with its derivative, so that millions of values cost no sine: cubic Hermite interpolation, off by
 * under 2e-7 of the amplitude of harmonic 60 and by 2e-9 of that of harmonic 20.
 */
final class FitTable {
    private static final int SIZE = 4096;
    private static final double[] COS = new double[SIZE];
    private static final double[] SIN = new double[SIZE];

    static {
        for (int i = 0; i < SIZE; i++) {
            COS[i] = Math.cos(2 * Math.PI * i / SIZE);
            SIN[i] = Math.sin(2 * Math.PI * i / SIZE);
        }
    }

    private final double[] values;
    private final double[] slopes;

    FitTable(HarmonicFit fit) {
        int count = fit.count();
        double[] cosines = new double[count + 1];
        double[] sines = new double[count + 1];
        double[] slopesOfSines = new double[count + 1];
        double[] slopesOfCosines = new double[count + 1];
        for (int k = 1; k <= count; k++) {
            cosines[k] = fit.cosine(k);
            sines[k] = fit.sine(k);
            slopesOfSines[k] = 2 * Math.PI / SIZE * k * fit.sine(k);
            slopesOfCosines[k] = -2 * Math.PI / SIZE * k * fit.cosine(k);
        }
        values = series(fit.mean(), cosines, sines, SIZE);
        slopes = series(0, slopesOfSines, slopesOfCosines, SIZE);
    }

    /**
     * Values of a fit at equal steps of its period, without interpolation.
     *
     * @param first  the first of them, in cycles from the middle of the record
     * @param places how many: 4096 or less, a power of 2
     */
    static double[] values(HarmonicFit fit, double first, int places) {
        double[] cosines = new double[fit.count() + 1];
        double[] sines = new double[fit.count() + 1];
        for (int k = 1; k < cosines.length; k++) {
            double cos = Math.cos(2 * Math.PI * k * first);
            double sin = Math.sin(2 * Math.PI * k * first);
            cosines[k] = fit.cosine(k) * cos + fit.sine(k) * sin;
            sines[k] = fit.sine(k) * cos - fit.cosine(k) * sin;
        }
        return Arrays.copyOf(series(fit.mean(), cosines, sines, places), places);
    }

    /** A series of cosines and sines at equal steps of its period; at the end the first value again. */
    private static double[] series(double mean, double[] cosines, double[] sines, int places) {
        int quarter = places / 4;
        double[] even = new double[2 * (quarter + 1)];
        double[] odd = new double[2 * (quarter + 1)];
        for (int k = 1; k < cosines.length; k++) {
            if (cosines[k] != 0 || sines[k] != 0) {
                add(k % 2 == 0 ? even : odd, k * (SIZE / places), cosines[k], sines[k]);
            }
        }
        double[] table = new double[places + 1];
        for (int i = 0; i <= quarter; i++) {
            spread(table, i, even, odd, mean);
        }
        return table;
    }

    /** Adds a harmonic to sums at each place of a quarter: of cosines, and of sines. */
    private static void add(double[] sums, int step, double cosine, double sine) {
        for (int i = 0, at = 0; i < sums.length; i += 2) {
            sums[i] += cosine * COS[at];
            sums[i + 1] += sine * SIN[at];
            at = at + step & (SIZE - 1);
        }
    }

    /** Four places a quarter apart or mirrored, from the sums over even and odd cosines and sines at one. */
    private static void spread(double[] table, int i, double[] even, double[] odd, double mean) {
        int half = table.length / 2;
        double cosines = even[2 * i] + odd[2 * i];
        double sines = even[2 * i + 1] + odd[2 * i + 1];
        double turnedCosines = even[2 * i] - odd[2 * i];
        double turnedSines = even[2 * i + 1] - odd[2 * i + 1];
        table[i] = mean + (cosines + sines);
        table[half - i] = mean + (turnedCosines - turnedSines);
        table[half + i] = mean + (turnedCosines + turnedSines);
        table[2 * half - i] = mean + (cosines - sines);
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
