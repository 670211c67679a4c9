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
    private final double[][] plain;
    private final double[][] timed;
    private final double[] real;
    private final double[] imaginary;

    /**
     * Sums of a record.
     *
     * @param series          samples
     * @param cyclesPerSample frequency of the fundamental over the sample rate
     * @param order           highest harmonic, 0 or more
     * @param withTimes       whether {@link #timed} will be asked for
     */
    PhaseSums(FitSamples series, double cyclesPerSample, int order, boolean withTimes) {
        bins = Math.max(64, Integer.highestOneBit(BINS_PER_ORDER * Math.max(1, order)) * 2);
        double[] moments = new double[bins * MOMENTS];
        double[] moments2 = new double[withTimes ? bins * MOMENTS : 0];
        sort(series, cyclesPerSample, moments, moments2);
        plain = folded(moments);
        timed = folded(moments2);
        real = new double[order + 1];
        imaginary = new double[order + 1];
        for (int k = 0; k <= order; k++) {
            double[] sum = sum(k, plain);
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
        double[] sum = sum(k, timed);
        return new double[] {sum[0], -sum[1]};
    }

    private void sort(FitSamples series, double cyclesPerSample, double[] moments, double[] ofTimes) {
        int n = series.size();
        double middle = (n - 1) / 2.0;
        for (int i = 0; i < n; i++) {
            double place = FoldedResiduals.fraction((i - middle) * cyclesPerSample) * bins;
            int bin = (int) place;
            double offset = place - bin - 0.5;
            int at = (bin & (bins - 1)) * MOMENTS;
            double value = series.at(i);
            add(moments, at, value, offset);
            if (ofTimes.length > 0) {
                add(ofTimes, at, value * ((i - middle) / n), offset);
            }
        }
    }

    /** Written out: a loop over eight places costs more than what it does. */
    private static void add(double[] moments, int at, double value, double offset) {
        double square = offset * offset;
        double odd = value * offset;
        moments[at] += value;
        moments[at + 1] += odd;
        value *= square;
        odd *= square;
        moments[at + 2] += value;
        moments[at + 3] += odd;
        value *= square;
        odd *= square;
        moments[at + 4] += value;
        moments[at + 5] += odd;
        moments[at + 6] += value * square;
        moments[at + 7] += odd * square;
    }

    /**
     * Bins that a harmonic turns alike or with the opposite sign taken together: half a cycle apart for odd harmonics, a quarter for even ones.
     *
     * @return for harmonic k, the one of index k modulo 4
     */
    private static double[][] folded(double[] moments) {
        int quarter = moments.length / 4;
        double[] fourth = new double[quarter];
        double[] second = new double[quarter];
        double[] odd = new double[2 * quarter];
        for (int i = 0; i < quarter; i++) {
            double first = moments[i];
            double next = moments[quarter + i];
            double opposite = moments[2 * quarter + i];
            double last = moments[3 * quarter + i];
            odd[i] = first - opposite;
            odd[quarter + i] = next - last;
            fourth[i] = first + opposite + (next + last);
            second[i] = first + opposite - (next + last);
        }
        return new double[][] {fourth, odd, second, odd};
    }

    /** Real and imaginary part of the sum over the bins. */
    private double[] sum(int k, double[][] folded) {
        double[] m = folded[k & 3];
        double t1 = 2 * Math.PI * k / bins;
        double t2 = -t1 * t1 / 2;
        double t3 = t2 * t1 / 3;
        double t4 = -t3 * t1 / 4;
        double t5 = t4 * t1 / 5;
        double t6 = -t5 * t1 / 6;
        double t7 = t6 * t1 / 7;
        double turnCos = Math.cos(t1);
        double turnSin = -Math.sin(t1);
        double c = Math.cos(t1 / 2);
        double s = -Math.sin(t1 / 2);
        double sumReal = 0;
        double sumImaginary = 0;
        for (int at = 0; at < m.length; at += MOMENTS) {
            double re = m[at] + t2 * m[at + 2] + t4 * m[at + 4] + t6 * m[at + 6];
            double im = t1 * m[at + 1] + t3 * m[at + 3] + t5 * m[at + 5] + t7 * m[at + 7];
            sumReal += re * c + im * s;
            sumImaginary += re * s - im * c;
            double next = c * turnCos - s * turnSin;
            s = s * turnCos + c * turnSin;
            c = next;
        }
        return new double[] {sumReal, sumImaginary};
    }
}
