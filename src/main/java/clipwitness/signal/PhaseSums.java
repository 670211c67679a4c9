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

    private final int bins;
    private final double[] even;
    private final double[] odd;
    private final double[] real;
    private final double[] imaginary;

    /**
     * @param series          samples
     * @param cyclesPerSample frequency of the fundamental over the sample rate
     * @param order           highest harmonic, 0 or more
     */
    PhaseSums(FitSamples series, double cyclesPerSample, int order) {
        bins = Math.max(64, Integer.highestOneBit(BINS_PER_ORDER * Math.max(1, order)) * 2);
        double[] moments = sorted(series, cyclesPerSample);
        even = folded(moments, 1);
        odd = folded(moments, -1);
        real = new double[order + 1];
        imaginary = new double[order + 1];
        for (int k = 0; k <= order; k++) {
            double[] sum = sum(k, 0);
            real[k] = sum[0];
            imaginary[k] = sum[1];
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

    /** Sums of (u / N) y cos(k w u) and (u / N) y sin(k w u), worked out when they are asked for. */
    double[] timed(int k) {
        double[] sum = sum(k, MOMENTS);
        return new double[] {sum[0], -sum[1]};
    }

    private double[] sorted(FitSamples series, double cyclesPerSample) {
        double[] moments = new double[bins * 2 * MOMENTS];
        int n = series.size();
        double middle = (n - 1) / 2.0;
        for (int i = 0; i < n; i++) {
            double phase = (i - middle) * cyclesPerSample;
            double place = FoldedResiduals.fraction(phase) * bins;
            int bin = (int) place & (bins - 1);
            double offset = place - (int) place - 0.5;
            int at = bin * 2 * MOMENTS;
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

    /** The bins half a cycle apart together: there even harmonics turn alike, odd ones with the opposite sign. */
    private double[] folded(double[] moments, int sign) {
        double[] folded = new double[moments.length / 2];
        for (int i = 0; i < folded.length; i++) {
            folded[i] = moments[i] + sign * moments[folded.length + i];
        }
        return folded;
    }

    /** Real and imaginary part of the sum over the moments that begin at a place of each bin. */
    private double[] sum(int k, int first) {
        double[] moments = k % 2 == 0 ? even : odd;
        double[] t = taylor(2 * Math.PI * k / bins);
        double turnCos = Math.cos(2 * Math.PI * k / bins);
        double turnSin = -Math.sin(2 * Math.PI * k / bins);
        double c = Math.cos(Math.PI * k / bins);
        double s = -Math.sin(Math.PI * k / bins);
        double sumReal = 0;
        double sumImaginary = 0;
        for (int at = first; at < moments.length; at += 2 * MOMENTS) {
            double re = moments[at] + t[2] * moments[at + 2] + t[4] * moments[at + 4] + t[6] * moments[at + 6];
            double im =
                    t[1] * moments[at + 1] + t[3] * moments[at + 3] + t[5] * moments[at + 5] + t[7] * moments[at + 7];
            sumReal += re * c + im * s;
            sumImaginary += re * s - im * c;
            double next = c * turnCos - s * turnSin;
            s = s * turnCos + c * turnSin;
            c = next;
        }
        return new double[] {sumReal, sumImaginary};
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
}
