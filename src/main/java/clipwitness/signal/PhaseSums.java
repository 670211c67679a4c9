package clipwitness.signal;

/**
 * Sums of a record at the harmonics of one frequency, S_k = sum y_n e^(-i k w u_n) and T_k = sum (u_n / N) y_n e^(-i k w u_n), where
 * u_n = n - (N - 1) / 2 counts samples from the middle of the record.
 *
 * <p>The samples are sorted by phase into bins, and each bin keeps the moments of its samples about its centre; the sums are the
 * Taylor series of the exponential about the centres. With eight moments and 25 bins or more for each order the remainder stays
 * under 1e-12 of the sum of |y|, and a sample costs no sine and no cosine however many harmonics are wanted.
 */
final class PhaseSums {
    private static final int MOMENTS = 8;
    private static final int BINS_PER_ORDER = 25;

    private final double[] real;
    private final double[] imaginary;
    private final double[] momentReal;
    private final double[] momentImaginary;

    /**
     * @param series          samples
     * @param cyclesPerSample frequency of the fundamental over the sample rate
     * @param order           highest harmonic, 0 or more
     */
    PhaseSums(Series series, double cyclesPerSample, int order) {
        int bins = Math.max(64, Integer.highestOneBit(BINS_PER_ORDER * Math.max(1, order)) * 2);
        double[] moments = moments(series, cyclesPerSample, bins);
        real = new double[order + 1];
        imaginary = new double[order + 1];
        momentReal = new double[order + 1];
        momentImaginary = new double[order + 1];
        for (int k = 0; k <= order; k++) {
            sum(moments, bins, k);
        }
    }

    /** Sum of y cos(k w u). */
    double cosine(int k) {
        return real[k];
    }

    /** Sum of y sin(k w u). */
    double sine(int k) {
        return -imaginary[k];
    }

    /** Sum of (u / N) y cos(k w u). */
    double timedCosine(int k) {
        return momentReal[k];
    }

    /** Sum of (u / N) y sin(k w u). */
    double timedSine(int k) {
        return -momentImaginary[k];
    }

    private static double[] moments(Series series, double cyclesPerSample, int bins) {
        double[] moments = new double[bins * 2 * MOMENTS];
        int n = series.size();
        double middle = (n - 1) / 2.0;
        for (int i = 0; i < n; i++) {
            double phase = (i - middle) * cyclesPerSample;
            double place = (phase - Math.floor(phase)) * bins;
            int bin = (int) place;
            double offset = place - bin - 0.5;
            int at = (bin & (bins - 1)) * 2 * MOMENTS;
            double value = series.at(i);
            double timed = value * (i - middle) / n;
            for (int p = 0; p < MOMENTS; p++) {
                moments[at + p] += value;
                moments[at + MOMENTS + p] += timed;
                value *= offset;
                timed *= offset;
            }
        }
        return moments;
    }

    private void sum(double[] moments, int bins, int k) {
        double[] series = taylor(2 * Math.PI * k / bins);
        double[] turn = {Math.cos(2 * Math.PI * k / bins), -Math.sin(2 * Math.PI * k / bins)};
        double c = Math.cos(Math.PI * k / bins);
        double s = -Math.sin(Math.PI * k / bins);
        for (int j = 0; j < bins; j++) {
            int at = j * 2 * MOMENTS;
            double re = even(moments, at, series);
            double im = -odd(moments, at, series);
            real[k] += re * c - im * s;
            imaginary[k] += re * s + im * c;
            re = even(moments, at + MOMENTS, series);
            im = -odd(moments, at + MOMENTS, series);
            momentReal[k] += re * c - im * s;
            momentImaginary[k] += re * s + im * c;
            double next = c * turn[0] - s * turn[1];
            s = s * turn[0] + c * turn[1];
            c = next;
        }
    }

    /** Coefficients of cos(a d) at even places and of sin(a d) at odd ones. */
    private static double[] taylor(double a) {
        double[] coefficients = new double[MOMENTS];
        double term = 1;
        for (int p = 0; p < MOMENTS; p++) {
            coefficients[p] = p % 4 < 2 ? term : -term;
            term *= a / (p + 1);
        }
        return coefficients;
    }

    private static double even(double[] m, int at, double[] c) {
        return m[at] + c[2] * m[at + 2] + c[4] * m[at + 4] + c[6] * m[at + 6];
    }

    private static double odd(double[] m, int at, double[] c) {
        return c[1] * m[at + 1] + c[3] * m[at + 3] + c[5] * m[at + 5] + c[7] * m[at + 7];
    }
}
