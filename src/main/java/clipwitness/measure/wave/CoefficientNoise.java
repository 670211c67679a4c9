package clipwitness.measure.wave;

import clipwitness.capture.Samples;
import clipwitness.signal.HarmonicFit;
import clipwitness.signal.MeanCycle;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * The converter's share in the uncertainty of the mean and of each harmonic. Where the noise is under half a code it does not blur the
 * converter's steps, and they make an error in each coefficient that no averaging removes: its rms over the positions of the wave
 * against the codes is added to the noise.
 */
final class CoefficientNoise {
    private static final double BLURRED = 0.5;
    private static final int AMPLITUDES = 3;
    private static final int PLACES = 1024;
    private static final double LEAST_IN_CODES = 0.15;
    private static final int TERMS = 3;
    private static final int MANY_TERMS = 50;

    /** Amplitude of a term over that of the first below which its square changes no digit that counts. */
    private static final double NEGLIGIBLE = 1e-6;

    private final List<double[]> cycles;
    private final double step;
    private final double dither;

    /**
     * The share of a converter.
     *
     * @param cycle mean cycle of the channel
     * @param step  converter step, V
     */
    CoefficientNoise(MeanCycle cycle, double step) {
        this.cycles = List.of(cycle.values(), cycle.smooth(PLACES, LEAST_IN_CODES * step));
        this.step = step;
        this.dither = dither(cycle, step);
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

    /**
     * The least noise before the converter, in codes. The scatter on slopes holds the rounding too, whose variance is step² / 12. Where a wave
     * has next to no slopes, its plateaus may stand between two codes, which alone scatters by up to step² / 4.
     */
    private static double dither(MeanCycle cycle, double step) {
        OptionalDouble onSlopes = cycle.leastNoiseOnSlopes();
        double ofRounding = onSlopes.isPresent() ? 1.0 / 12 : 1.0 / 4;
        double codes = onSlopes.orElseGet(cycle::leastNoise) / step;
        return Math.sqrt(Math.max(0, codes * codes - ofRounding));
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
     * Variance of the mean and of the amplitude of each harmonic of the mean rounding error over the cycle. Rounding a noisy value x, in
     * codes, is off by sum of b_m sin(2 pi m x) on average, b_m = (-1)^m / (pi m) e^(-2 pi² m² s²) for noise of s codes (B. Widrow, I. Kollár,
     * Quantization Noise, 2008). Averaged over the positions of the wave within a code, harmonic k of that has the square of amplitude
     * sum of b_m² (|G_k|² + |G_-k|²), G the Fourier coefficients of e^(2 pi i m x) over the cycle. The largest of several amplitudes within a
     * code counts, since the plateaus of a clipped wave may lie anywhere, and the larger of two descriptions of the cycle: its bins know
     * flat plateaus, but rounding has made treads of slopes; harmonics too large to come from rounding know the slopes, but ripple on
     * plateaus. The error may lie in one quadrature alone, so each takes the whole of it.
     */
    private double[] stepErrors(int orders) {
        double[] largest = new double[orders + 1];
        for (double[] cycle : cycles) {
            double span = span(cycle) / step;
            for (int amplitude = 0; amplitude < AMPLITUDES; amplitude++) {
                double[] variance = variance(cycle, (1 + (double) amplitude / AMPLITUDES / span) / step, orders);
                for (int k = 0; k <= orders; k++) {
                    largest[k] = Math.max(largest[k], variance[k]);
                }
            }
        }
        return largest;
    }

    private double[] variance(double[] cycle, double codesPerVolt, int orders) {
        double[] variance = new double[orders + 1];
        double[][] circle = circle(cycle, 2 * Math.PI * codesPerVolt);
        double[][] turned = {circle[0].clone(), circle[1].clone()};
        for (int m = 1; m <= TERMS && blur(m) > NEGLIGIBLE * blur(1); m++) {
            addPowers(new double[][] {turned[0].clone(), turned[1].clone()}, square(step * blur(m)), variance);
            turn(turned, circle);
        }
        return variance;
    }

    private static double span(double[] values) {
        double least = values[0];
        double most = values[0];
        for (double v : values) {
            least = Math.min(least, v);
            most = Math.max(most, v);
        }
        return most - least;
    }

    /** Real and imaginary part of e^(i turn y), y the cycle. */
    private static double[][] circle(double[] cycle, double turn) {
        double[][] circle = new double[2][cycle.length];
        for (int i = 0; i < cycle.length; i++) {
            circle[0][i] = Math.cos(turn * cycle[i]);
            circle[1][i] = Math.sin(turn * cycle[i]);
        }
        return circle;
    }

    /** Multiplies complex numbers by others. */
    private static void turn(double[][] numbers, double[][] by) {
        for (int i = 0; i < numbers[0].length; i++) {
            double real = numbers[0][i] * by[0][i] - numbers[1][i] * by[1][i];
            numbers[1][i] = numbers[0][i] * by[1][i] + numbers[1][i] * by[0][i];
            numbers[0][i] = real;
        }
    }

    /** Adds |G_k|² + |G_-k|² of so many complex numbers as a power of two, which are overwritten, times a factor; |G_0|² / 2 for the mean. */
    private static void addPowers(double[][] circle, double factor, double[] powers) {
        int n = circle[0].length;
        FastFourierTransformer.transformInPlace(circle, DftNormalization.STANDARD, TransformType.FORWARD);
        for (int k = 0; k < powers.length; k++) {
            double both = square(circle, k) + square(circle, (n - k) % n);
            powers[k] += factor / n / n * (k == 0 ? both / 4 : both);
        }
    }

    private static double square(double[][] values, int at) {
        return values[0][at] * values[0][at] + values[1][at] * values[1][at];
    }
}
