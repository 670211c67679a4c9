package clipwitness.measure.wave;

import clipwitness.capture.Samples;
import clipwitness.measure.CycleTrace;
import clipwitness.signal.CodeStep;
import clipwitness.signal.HarmonicFit;
import clipwitness.signal.MeanCycle;
import clipwitness.signal.ResidualSpectrum;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * One channel with everything that its figures are made from.
 *
 * @param fit      mean and harmonics
 * @param cycle    mean cycle, beginning where the output's fundamental goes up through zero
 * @param origin   that beginning, in cycles from the middle of the record
 * @param residual spectrum of what the mean cycle leaves
 * @param rest     density of the rest, as the scatter that white noise of it would have, at the mean (index 0) and each harmonic, V
 * @param noise    the same with the converter's steps, where the rest does not blur them
 * @param codeStep converter step in V, where the samples show one
 * @param undithered standard uncertainty of one value from converter steps that the noise does not dither, V: {@link CoefficientNoise#ofOneValue}
 */
public record FittedWave(
        HarmonicFit fit,
        MeanCycle cycle,
        double origin,
        ResidualSpectrum residual,
        Samples rest,
        Samples noise,
        OptionalDouble codeStep,
        double undithered) {
    private static final double LINE_ABOVE_NOISE = 6;
    private static final double STANDS_OUT = 3;

    /**
     * A channel with its mean cycle.
     *
     * @param samples the record
     * @param joint   its fit, which gives frequency and number of harmonics
     * @param origin  where the mean cycle begins, in cycles from the middle of the record
     */
    public static FittedWave of(Samples samples, HarmonicFit joint, double origin) {
        MeanCycle cycle = MeanCycle.of(samples, joint, origin);
        HarmonicFit fit = cycle.fit();
        ResidualSpectrum residual = new ResidualSpectrum(samples, cycle);
        OptionalDouble step = CodeStep.of(samples);
        Samples rest = Samples.of(residual.atHarmonics(cycle.noise(), fit.count()));
        if (step.isEmpty()) {
            return new FittedWave(fit, cycle, origin, residual, rest, rest, step, 0).movedByFolding();
        }
        CoefficientNoise converter = new CoefficientNoise(cycle, step.getAsDouble());
        Samples noise = converter.withSteps(rest, fit);
        return new FittedWave(fit, cycle, origin, residual, rest, noise, step, converter.ofOneValue()).movedByFolding();
    }

    private FittedWave movedByFolding() {
        FoldedHarmonics folded = new FoldedHarmonics(cycle);
        return folded.none()
                ? this
                : movedBy(IntStream.rangeClosed(0, fit.count())
                        .mapToDouble(folded::bound)
                        .toArray());
    }

    /**
     * Whether an amplitude exceeds three times the standard uncertainty that both its quadratures give it.
     *
     * @param variance of one quadrature
     */
    public static boolean standsOut(double amplitude, double variance) {
        return amplitude > STANDS_OUT * Math.sqrt(2 * variance);
    }

    /** The wave with another mean cycle, the noise as it is. */
    public FittedWave with(MeanCycle other) {
        return new FittedWave(other.fit(), other, origin, residual, rest, noise, codeStep, undithered);
    }

    /** The wave with the converter step of another, which shows it where something was taken out of this one. */
    public FittedWave withStepOf(FittedWave other) {
        return new FittedWave(fit, cycle, origin, residual, rest, noise, other.codeStep, undithered);
    }

    /**
     * The wave with something that may have moved its mean and its harmonics.
     *
     * @param bounds how far at most, of the mean (index 0) and each harmonic, V: u = a / sqrt 3 of each coefficient
     */
    public FittedWave movedBy(double[] bounds) {
        double[] wider = noise.toArray();
        for (int k = 0; k < wider.length; k++) {
            double unit = k == 0 ? fit.covariance(0, 0) : fit.quadratureVariance(k);
            wider[k] = Math.sqrt(wider[k] * wider[k] + bounds[k] * bounds[k] / 3 / unit);
        }
        return new FittedWave(fit, cycle, origin, residual, rest, Samples.of(wider), codeStep, undithered);
    }

    /** Scatter of single samples, V. */
    public double scatter() {
        return cycle.noise();
    }

    /** Variance of one quadrature of harmonic k, V². */
    public double quadratureVariance(int k) {
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

    /** Whether the fundamental stands out of the rest of the record by six times the standard uncertainty that the rest gives it. */
    public boolean hasFundamental() {
        return fit.amplitude(1) > LINE_ABOVE_NOISE * Math.sqrt(fit.quadratureVariance(1)) * rest.at(1);
    }

    /** The mean cycle as a result. */
    public CycleTrace trace() {
        double mean = fit.mean();
        Samples swing = Samples.of(cycle.values()).map(v -> v - mean);
        return new CycleTrace(swing, mean, cycle.binUncertainty());
    }

    /** Standard uncertainty of the mean, V. */
    double meanUncertainty() {
        return Math.sqrt(fit.covariance(0, 0)) * noise.at(0);
    }

    /**
     * Variance of the mean from white noise, V²: what the mean shares with a level found from some of the samples. That is a sum of samples
     * with shares that add up to 1, each of which the mean holds with a share of 1/N.
     */
    double sharedVariance() {
        double white = Math.min(scatter(), rest.at(0));
        return fit.covariance(0, 0) * white * white;
    }

    /** Number of harmonics. */
    public int count() {
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
    public NoisyPower harmonicPower(int k) {
        double random = fit.quadratureVariance(k) * rest.at(k) * rest.at(k);
        return NoisyPower.ofAmplitude(fit.amplitude(k), random, quadratureVariance(k));
    }

    /** Squares of the amplitudes of several harmonics with their noise removed. */
    public NoisyPower harmonicPower(int from, int step) {
        NoisyPower sum = NoisyPower.ZERO;
        for (int k = from; k <= count(); k += step) {
            sum = sum.plus(harmonicPower(k));
        }
        return sum;
    }
}
