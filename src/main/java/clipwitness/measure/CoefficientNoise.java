package clipwitness.measure;

import clipwitness.capture.Samples;
import clipwitness.signal.HarmonicFit;
import clipwitness.signal.MeanCycle;
import java.util.Arrays;

/**
 * The converter's share in the uncertainty of the mean and of each harmonic. Where the noise is under half a code it does not blur the
 * converter's steps, and they make an error in each coefficient that no averaging removes: its rms over the positions of the wave
 * against the codes is added to the noise.
 */
final class CoefficientNoise {
    private static final double BLURRED = 0.5;
    private static final int POSITIONS = 5;
    private static final int TERMS = 3;
    private static final int MANY_TERMS = 50;

    private final double[] cycle;
    private final double step;
    private final double dither;

    /**
     * The share of a converter.
     *
     * @param cycle mean cycle of the channel
     * @param step  converter step, V
     */
    CoefficientNoise(MeanCycle cycle, double step) {
        this.cycle = cycle.values();
        this.step = step;
        this.dither = dither(cycle.noiseOnSlopes() / step);
    }

    /**
     * Adds the converter's steps to the noise of the coefficients.
     *
     * @param rest noise of the mean (index 0) and of each harmonic, V
     */
    Samples withSteps(Samples rest, HarmonicFit fit) {
        if (dither >= BLURRED) {
            return rest;
        }
        double[] noise = rest.toArray();
        double[] steps = stepErrors(fit.count());
        for (int k = 0; k < noise.length; k++) {
            double unit = k == 0 ? fit.covariance(0, 0) : fit.quadratureVariance(k);
            noise[k] = Math.sqrt(noise[k] * noise[k] + steps[k] / unit);
        }
        return Samples.of(noise);
    }

    /** Noise before the converter in codes: the scatter on slopes holds the rounding too, whose variance is step² / 12. */
    private static double dither(double codes) {
        return Math.sqrt(Math.max(0, codes * codes - 1.0 / 12));
    }

    /**
     * Standard uncertainty of a value that stands anywhere within a code, from the mean error of rounding it: the step over root 12 without
     * noise, blurred by noise: an eighth of that at 0.3 codes rms, next to nothing from half a code on.
     */
    double ofOneValue() {
        double variance = 0;
        for (int m = 1; m <= MANY_TERMS; m++) {
            variance += square(blur(m)) / 2;
        }
        return step * Math.sqrt(variance);
    }

    private static double square(double x) {
        return x * x;
    }

    /** Amplitude of term m of the mean error in codes. */
    private double blur(int m) {
        return Math.exp(-2 * square(Math.PI * m * dither)) / (Math.PI * m);
    }

    /**
     * Variance of the mean and of the amplitude of each harmonic of the mean rounding error over the cycle, averaged over positions of the wave
     * within a code, the largest of several amplitudes within a code, since the plateaus of a clipped wave may lie anywhere. The error
     * may lie in one quadrature alone, so each takes the whole of it.
     */
    private double[] stepErrors(int orders) {
        double[] blur = blur();
        double span = (max(cycle) - min(cycle)) / step;
        double[] largest = new double[orders + 1];
        double[] error = new double[cycle.length];
        for (int amplitude = 0; amplitude < POSITIONS; amplitude++) {
            double scale = 1 + (double) amplitude / POSITIONS / span;
            double[] variance = new double[orders + 1];
            for (int position = 0; position < POSITIONS; position++) {
                for (int i = 0; i < cycle.length; i++) {
                    error[i] = meanError(cycle[i] / step * scale + (double) position / POSITIONS, blur) * step;
                }
                addPowers(error, variance);
            }
            for (int k = 0; k <= orders; k++) {
                largest[k] = Math.max(largest[k], variance[k] / POSITIONS);
            }
        }
        return largest;
    }

    private static double max(double[] values) {
        return Arrays.stream(values).max().orElseThrow();
    }

    private static double min(double[] values) {
        return Arrays.stream(values).min().orElseThrow();
    }

    /** Mean error of rounding a noisy value: a saw-tooth whose harmonics the noise blurs, sum of (-1)^m / (pi m) e^(-2 pi² m² s²) sin(2 pi m x). */
    private static double meanError(double codes, double[] blur) {
        double turn = 2 * Math.cos(2 * Math.PI * codes);
        double before = 0;
        double sine = Math.sin(2 * Math.PI * codes);
        double sum = 0;
        for (double factor : blur) {
            sum += factor * sine;
            double next = turn * sine - before;
            before = sine;
            sine = next;
        }
        return sum;
    }

    private double[] blur() {
        double[] blur = new double[TERMS];
        for (int m = 1; m <= TERMS; m++) {
            blur[m - 1] = m % 2 == 0 ? blur(m) : -blur(m);
        }
        return blur;
    }

    /** Adds the square of the mean (place 0) and of the amplitude of each harmonic. */
    private static void addPowers(double[] values, double[] powers) {
        int n = values.length;
        for (int k = 0; k < powers.length; k++) {
            double turnCos = Math.cos(2 * Math.PI * k / n);
            double turnSin = Math.sin(2 * Math.PI * k / n);
            double cos = 1;
            double sin = 0;
            double real = 0;
            double imaginary = 0;
            for (double value : values) {
                real += value * cos;
                imaginary += value * sin;
                double next = cos * turnCos - sin * turnSin;
                sin = sin * turnCos + cos * turnSin;
                cos = next;
            }
            double square = (real * real + imaginary * imaginary) / n / n;
            powers[k] += k == 0 ? square : 4 * square;
        }
    }
}
