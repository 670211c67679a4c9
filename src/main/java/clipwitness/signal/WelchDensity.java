package clipwitness.signal;

import clipwitness.capture.Samples;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * Power of a record over frequency by Welch's method (P. D. Welch, IEEE Trans. Audio Electroacoust. 15, 1967): squared Fourier transforms of
 * Hann-windowed segments that overlap by half, averaged. The power of all bins together is the mean square of the record about its mean:
 * each transform is divided by the energy of the window, so a line of any frequency and white noise both keep their power.
 *
 * <p>How uncertain a sum of bins is follows from the scatter of each bin from segment to segment: a steady line scatters less than noise of
 * its power, and no model of the noise is needed.
 */
public final class WelchDensity {
    /** Sum of |G|² over the bins, G the correlation of two bins of noise under the Hann window: 35/18. */
    private static final double CORRELATED_BINS = 35.0 / 18;

    private final int length;
    private final int transform;
    private final int segments;
    private final double shorter;
    private final double[] power;
    private final double[] scatter;

    private WelchDensity(Samples samples, int length) {
        this.length = length;
        this.transform = length == 1 ? 1 : Integer.highestOneBit(length - 1) * 2;
        double[] window = window(length);
        int room = samples.size() - length;
        segments = 1 + (2 * room + length - 1) / length;
        power = new double[transform / 2 + 1];
        scatter = new double[power.length];
        double[] weight = new double[samples.size()];
        for (int j = 0; j < segments; j++) {
            int from = (int) ((long) j * room / (segments - 1));
            add(segment(samples, from, window), j);
            for (int i = 0; i < length; i++) {
                weight[from + i] += window[i] * window[i];
            }
        }
        shorter = concentration(weight) / concentration(squares(window));
    }

    /**
     * Transforms a record without gaps.
     *
     * @param samples the record
     * @param length  samples of a segment, 4 or more, at most half of the record: one segment alone has no scatter
     */
    public static WelchDensity of(Samples samples, int length) {
        if (length < 4 || length > samples.size() / 2 || samples.gaps() > 0) {
            throw new IllegalArgumentException("segments of " + length + " samples do not fit " + samples);
        }
        return new WelchDensity(samples, length);
    }

    private static double[] window(int length) {
        double[] window = new double[length];
        for (int i = 0; i < length; i++) {
            window[i] = 0.5 - 0.5 * Math.cos(2 * Math.PI * (i + 0.5) / length);
        }
        return window;
    }

    private static double[] squares(double[] values) {
        double[] squares = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            squares[i] = values[i] * values[i];
        }
        return squares;
    }

    /** Sum of the squares over the square of the sum: one over the number of samples where all weigh alike. */
    private static double concentration(double[] weights) {
        double sum = 0;
        double squares = 0;
        for (double w : weights) {
            sum += w;
            squares += w * w;
        }
        return squares / (sum * sum);
    }

    /** Power of each bin of one segment, its weighted mean taken off. */
    private double[] segment(Samples samples, int from, double[] window) {
        double energy = 0;
        double mean = 0;
        for (int i = 0; i < length; i++) {
            energy += window[i] * window[i];
            mean += window[i] * samples.at(from + i) * 2 / length; // the window's mean is a half
        }
        double[][] data = new double[2][transform];
        for (int i = 0; i < length; i++) {
            data[0][i] = window[i] * (samples.at(from + i) - mean);
        }
        FastFourierTransformer.transformInPlace(data, DftNormalization.STANDARD, TransformType.FORWARD);
        double[] bins = new double[power.length];
        for (int k = 0; k < bins.length; k++) {
            double sides = k == 0 || k == transform / 2 ? 1 : 2;
            bins[k] = sides * (data[0][k] * data[0][k] + data[1][k] * data[1][k]) / (energy * transform);
        }
        return bins;
    }

    /** Mean and sum of squared distances, brought forward by one segment (B. P. Welford, Technometrics 4, 1962). */
    private void add(double[] bins, int before) {
        for (int k = 0; k < bins.length; k++) {
            double distance = bins[k] - power[k];
            power[k] += distance / (before + 1);
            scatter[k] += distance * (bins[k] - power[k]);
        }
    }

    /** Number of bins; the last lies at half the sample rate. */
    public int bins() {
        return power.length;
    }

    /** Distance of two bins over the sample rate. */
    public double spacing() {
        return 1.0 / transform;
    }

    /** Root mean square width of a line under the window over the sample rate: 1 / (root 3 times the segment's length). */
    public double lineWidth() {
        return 1 / (Math.sqrt(3) * length);
    }

    /** Mean power in a bin, the square of the record's unit. */
    public double power(int bin) {
        return power[bin];
    }

    /** Sum of the bins, each with a weight. */
    public double power(double[] weights) {
        double sum = 0;
        for (int k = 0; k < weights.length; k++) {
            sum += weights[k] * power[k];
        }
        return sum;
    }

    /** Variance of {@link #power(double[])}; neighbouring bins are correlated by the window, overlapping segments by their common samples. */
    public double variance(double[] weights) {
        double sum = 0;
        for (int k = 0; k < weights.length; k++) {
            sum += weights[k] * weights[k] * scatter[k];
        }
        return sum / (segments - 1) * correlation() * shorter;
    }

    /** Degrees of freedom that this variance was estimated from (JCGM 100, G.4.1), above 0. */
    public double degreesOfFreedom(double[] weights) {
        double sum = 0;
        double squares = 0;
        for (int k = 0; k < weights.length; k++) {
            double part = weights[k] * weights[k] * scatter[k];
            sum += part;
            squares += part * part;
        }
        return squares > 0 ? sum * sum / squares * (segments - 1) / correlation() : Double.POSITIVE_INFINITY;
    }

    /** The same for bins that zeros behind the segment bring closer together. */
    private double correlation() {
        return CORRELATED_BINS * transform / length;
    }
}
