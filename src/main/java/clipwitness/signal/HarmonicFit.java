package clipwitness.signal;

import java.util.Arrays;

/**
 * Mean and harmonics of one channel: y = mean + sum of a_k cos(k w t) + b_k sin(k w t), with t = 0 in the middle of the record.
 */
public final class HarmonicFit {
    private final double[] coefficients;
    private final Covariance covariance;
    private final double cyclesPerSample;
    private final int samples;
    private final double phaseVariance;

    /**
     * A fit at a settled frequency.
     *
     * @param phaseVariance variance of the phase that the record spans, for noise of unit variance
     * @param known         number of harmonics whose covariances are kept
     */
    HarmonicFit(LinearFit fit, double cyclesPerSample, int samples, double phaseVariance, int known) {
        this.coefficients = fit.coefficients();
        this.covariance = new Covariance(fit, phaseVariance, known);
        this.cyclesPerSample = cyclesPerSample;
        this.samples = samples;
        this.phaseVariance = phaseVariance;
    }

    /** Covariances of the coefficients, worked out when they are first asked for: many fits are asked for their coefficients alone. */
    private static final class Covariance {
        private final double phaseVariance;
        private final int known;
        private LinearFit fit;
        private double[][] values;

        Covariance(LinearFit fit, double phaseVariance, int known) {
            this.fit = fit;
            this.phaseVariance = phaseVariance;
            this.known = known;
        }

        synchronized double at(int i, int j) {
            if (values == null) {
                values = fit.covariance(phaseVariance, known);
                fit = null; // it holds sums of the record
            }
            return values[i][j];
        }
    }

    private HarmonicFit(HarmonicFit wide, double[] coefficients) {
        this.coefficients = coefficients;
        this.covariance = wide.covariance;
        this.cyclesPerSample = wide.cyclesPerSample;
        this.samples = wide.samples;
        this.phaseVariance = wide.phaseVariance;
    }

    /** Fit of a number of harmonics at the frequency of this fit, with the covariances of as many as this one has. */
    HarmonicFit withHarmonics(FitSamples series, int harmonics) {
        LinearFit fit = LinearFit.settled(series, cyclesPerSample, harmonics);
        return new HarmonicFit(fit, cyclesPerSample, samples, phaseVariance, count());
    }

    /** The first harmonics of this fit, with the coefficients that they have beside the others. */
    HarmonicFit first(int harmonics) {
        return new HarmonicFit(this, Arrays.copyOf(coefficients, 2 * harmonics + 1));
    }

    /** The fit with harmonics of a smaller amplitude set to zero. */
    HarmonicFit withoutHarmonicsBelow(double amplitude) {
        double[] large = coefficients.clone();
        for (int k = 1; k <= count(); k++) {
            if (amplitude(k) < amplitude) {
                large[2 * k - 1] = 0;
                large[2 * k] = 0;
            }
        }
        return new HarmonicFit(this, large);
    }

    /** The fit with a function applied to each harmonic; the covariances stay as they are. */
    HarmonicFit with(Change change) {
        double[] others = coefficients.clone();
        for (int k = 1; k <= count(); k++) {
            double[] anew = change.of(k, cosine(k), sine(k));
            others[2 * k - 1] = anew[0];
            others[2 * k] = anew[1];
        }
        return new HarmonicFit(this, others);
    }

    /** The difference from a fit with as many harmonics at the same frequency, up to the last harmonic that differs. */
    HarmonicFit less(HarmonicFit other) {
        int last = count();
        while (last > 0 && cosine(last) == other.cosine(last) && sine(last) == other.sine(last)) {
            last--;
        }
        double[] change = Arrays.copyOf(coefficients, 2 * last + 1);
        for (int i = 0; i < change.length; i++) {
            change[i] -= other.coefficients[i];
        }
        return new HarmonicFit(this, change);
    }

    /** Number of harmonics, the fundamental included. */
    public int count() {
        return (coefficients.length - 1) / 2;
    }

    /** Number of fitted linear parameters: mean, cosines and sines. */
    public int parameters() {
        return coefficients.length;
    }

    /** Constant of the fit. */
    public double mean() {
        return coefficients[0];
    }

    /** Cosine coefficient of harmonic k, from 1. */
    public double cosine(int k) {
        return coefficients[2 * k - 1];
    }

    /** Sine coefficient of harmonic k, from 1. */
    public double sine(int k) {
        return coefficients[2 * k];
    }

    /** Peak amplitude of harmonic k, from 1. */
    public double amplitude(int k) {
        return Math.hypot(cosine(k), sine(k));
    }

    /** Phase phi_k of harmonic k in A_k cos(k w t + phi_k), rad. */
    public double phase(int k) {
        return Math.atan2(-sine(k), cosine(k));
    }

    /** Frequency of the fundamental over the sample rate. */
    public double cyclesPerSample() {
        return cyclesPerSample;
    }

    /**
     * Covariance of two coefficients for noise of unit variance, the frequency's share included.
     *
     * @param i 0 for the mean, 2 k - 1 for the cosine and 2 k for the sine of harmonic k
     * @param j as i
     */
    public double covariance(int i, int j) {
        return covariance.at(i, j);
    }

    /** Mean variance of the two coefficients of harmonic k for noise of unit variance: 2 / N in a long record. */
    public double quadratureVariance(int k) {
        return (covariance.at(2 * k - 1, 2 * k - 1) + covariance.at(2 * k, 2 * k)) / 2;
    }

    /** Phase of the fundamental's cycle at a sample, in cycles from the middle of the record. */
    public double cyclesAt(int sample) {
        return (sample - (samples - 1) / 2.0) * cyclesPerSample;
    }

    /**
     * Value of the fit, mean included.
     *
     * @param cycles time in cycles from the middle of the record
     */
    public double at(double cycles) {
        double angle = 2 * Math.PI * (cycles - Math.rint(cycles));
        double turnCos = Math.cos(angle);
        double turnSin = Math.sin(angle);
        double cos = 1;
        double sin = 0;
        double sum = coefficients[0];
        for (int k = 1; k <= count(); k++) {
            double next = cos * turnCos - sin * turnSin;
            sin = sin * turnCos + cos * turnSin;
            cos = next;
            sum += cosine(k) * cos + sine(k) * sin;
        }
        return sum;
    }

    /** What becomes of each harmonic of a wave. */
    @FunctionalInterface
    public interface Change {
        /**
         * New cosine and sine coefficient of a harmonic.
         *
         * @param order  1 for the fundamental
         * @param cosine coefficient before
         * @param sine   coefficient before
         */
        double[] of(int order, double cosine, double sine);
    }
}
