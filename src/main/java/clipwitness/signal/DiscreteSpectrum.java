package clipwitness.signal;

import clipwitness.capture.Samples;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * Discrete Fourier transform of a record as long as it is, X(k) = sum of x(n) exp(-2 pi i k n / N), not scaled: neither cut nor padded to a power of two,
 * which would smear every line. It is made of three transforms whose length is a power of two (L. I. Bluestein, A linear filtering approach to the
 * computation of the discrete Fourier transform, IEEE Trans. Audio Electroacoust. 18, 451-455, 1970).
 */
public final class DiscreteSpectrum {
    private final double[] real;
    private final double[] imaginary;

    private DiscreteSpectrum(double[] real, double[] imaginary) {
        this.real = real;
        this.imaginary = imaginary;
    }

    /**
     * The transform of a record, its mean taken off.
     *
     * @param samples 2 or more, without gaps
     * @return bins 0 to N / 2
     */
    public static DiscreteSpectrum of(Samples samples) {
        int n = samples.size();
        int padded = Integer.highestOneBit(2 * n - 1) << 1;
        double[][] record = new double[2][padded];
        double[][] chirp = new double[2][padded];
        double mean = mean(samples);
        for (int i = 0; i < n; i++) {
            double phase = phase(i, n);
            double value = samples.at(i) - mean;
            record[0][i] = value * Math.cos(phase);
            record[1][i] = -value * Math.sin(phase);
            chirp[0][i] = Math.cos(phase);
            chirp[1][i] = Math.sin(phase);
            if (i > 0) {
                chirp[0][padded - i] = chirp[0][i];
                chirp[1][padded - i] = chirp[1][i];
            }
        }
        transform(record, TransformType.FORWARD);
        transform(chirp, TransformType.FORWARD);
        multiply(record, chirp);
        transform(record, TransformType.INVERSE);
        return turnedBack(record, n);
    }

    /** pi i^2 / n, the square taken modulo 2 n so that large numbers lose no digits. */
    private static double phase(int i, int n) {
        return Math.PI * ((long) i * i % (2L * n)) / n;
    }

    private static double mean(Samples samples) {
        double sum = 0;
        for (int i = 0; i < samples.size(); i++) {
            sum += samples.at(i);
        }
        return sum / samples.size();
    }

    private static void transform(double[][] data, TransformType type) {
        FastFourierTransformer.transformInPlace(data, DftNormalization.STANDARD, type);
    }

    private static void multiply(double[][] a, double[][] b) {
        for (int i = 0; i < a[0].length; i++) {
            double re = a[0][i] * b[0][i] - a[1][i] * b[1][i];
            a[1][i] = a[0][i] * b[1][i] + a[1][i] * b[0][i];
            a[0][i] = re;
        }
    }

    private static DiscreteSpectrum turnedBack(double[][] data, int n) {
        double[] re = new double[n / 2 + 1];
        double[] im = new double[n / 2 + 1];
        for (int k = 0; k < re.length; k++) {
            double cos = Math.cos(phase(k, n));
            double sin = Math.sin(phase(k, n));
            re[k] = data[0][k] * cos + data[1][k] * sin;
            im[k] = data[1][k] * cos - data[0][k] * sin;
        }
        return new DiscreteSpectrum(re, im);
    }

    /** Number of bins. */
    public int size() {
        return real.length;
    }

    /** Real part of a bin. */
    public double real(int bin) {
        return real[bin];
    }

    /** Imaginary part of a bin. */
    public double imaginary(int bin) {
        return imaginary[bin];
    }

    /** Squared magnitude of a bin. */
    public double power(int bin) {
        return real[bin] * real[bin] + imaginary[bin] * imaginary[bin];
    }
}
