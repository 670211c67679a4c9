package clipwitness.measure;

import clipwitness.capture.Samples;
import clipwitness.signal.HarmonicFit;
import clipwitness.signal.MeanCycle;
import java.util.OptionalDouble;

/**
 * One channel with everything that its figures are made from.
 *
 * @param fit      mean and harmonics
 * @param cycle    mean cycle, beginning where the output's fundamental goes up through zero
 * @param origin   that beginning, in cycles from the middle of the record
 * @param noise    what takes the place of the scatter for the mean (index 0) and each harmonic, V
 * @param codeStep converter step in V, where the samples show one
 */
record FittedWave(HarmonicFit fit, MeanCycle cycle, double origin, Samples noise, OptionalDouble codeStep) {
    /** Scatter of single samples, V. */
    double scatter() {
        return cycle.noise();
    }

    /** Variance of one quadrature of harmonic k, V². */
    double quadratureVariance(int k) {
        return fit.quadratureVariance(k) * noise.at(k) * noise.at(k);
    }

    /** Standard uncertainty of a function of the coefficients with this gradient, in the order of {@link HarmonicFit#covariance}. */
    double uncertainty(double[] gradient) {
        double sum = 0;
        for (int i = 0; i < gradient.length; i++) {
            if (gradient[i] != 0) {
                for (int j = 0; j < gradient.length; j++) {
                    sum += gradient[i]
                            * gradient[j]
                            * fit.covariance(i, j)
                            * noise.at((i + 1) / 2)
                            * noise.at((j + 1) / 2);
                }
            }
        }
        return Math.sqrt(Math.max(0, sum));
    }

    /** Number of harmonics. */
    int count() {
        return fit.count();
    }

    /** Mean square of the swing, V²: the fitted harmonics and what they leave of the mean cycle, noise removed. */
    double swingPower() {
        double power = cycle.remainingPower();
        for (int k = 1; k <= count(); k++) {
            power += harmonicPower(k).power() / 2;
        }
        return power;
    }

    /** Root mean square of the swing, V. */
    double rms() {
        return Math.sqrt(Math.max(swingPower(), 0));
    }

    /** Square of A_k with its noise removed. */
    NoisyPower harmonicPower(int k) {
        double amplitude = fit.amplitude(k);
        return NoisyPower.ofAmplitude(amplitude, quadratureVariance(k));
    }

    /** Squares of the amplitudes of several harmonics with their noise removed. */
    NoisyPower harmonicPower(int from, int step) {
        NoisyPower sum = NoisyPower.ZERO;
        for (int k = from; k <= count(); k += step) {
            sum = sum.plus(harmonicPower(k));
        }
        return sum;
    }

    /** Converter step over root 12 where the noise is too small to dither it, else 0. */
    double undithered() {
        if (codeStep.isEmpty() || scatter() >= 0.3 * codeStep.getAsDouble()) {
            return 0;
        }
        return codeStep.getAsDouble() / Math.sqrt(12);
    }
}
