package clipwitness.measure.transfer;

import clipwitness.measure.Measured;
import clipwitness.measure.wave.FittedWave;
import clipwitness.measure.wave.NoisyPower;
import clipwitness.quantity.Unit;
import clipwitness.signal.HarmonicFit;

/**
 * How far the rising and the falling branch of a transfer curve part. Over a sine as input, counted from where it goes up through its mean, the
 * branches differ by the cosines of odd harmonics and the sines of even ones, twice each; a distorted input mixes them.
 */
final class Branches {
    private final double[] real;
    private final double[] imaginary;
    private final double[] random;
    private final double[] whole;
    private final double[] amplitudes;
    private final boolean[] raised;
    private final double amplitudeUncertainty;
    private final Mixing mixing;

    Branches(FittedWave output, FittedWave input) {
        int count = output.count();
        HarmonicFit fit = output.fit();
        real = new double[count + 1];
        imaginary = new double[count + 1];
        random = new double[count + 1];
        whole = new double[count + 1];
        amplitudes = new double[count + 1];
        raised = new boolean[count + 1];
        double ofPhase = output.quadratureVariance(1) / Math.pow(fit.amplitude(1), 2);
        for (int k = 1; k <= count; k++) {
            double turn = 2 * Math.PI * k * output.origin();
            real[k] = fit.cosine(k) * Math.cos(turn) + fit.sine(k) * Math.sin(turn);
            imaginary[k] = fit.cosine(k) * Math.sin(turn) - fit.sine(k) * Math.cos(turn);
            double delayed = Math.pow(k * fit.amplitude(k), 2) * ofPhase;
            random[k] = fit.quadratureVariance(k) * Math.pow(output.rest().at(k), 2) + delayed;
            whole[k] = output.quadratureVariance(k) + delayed;
            amplitudes[k] = Math.hypot(real[k], imaginary[k]);
            raised[k] = FittedWave.standsOut(amplitudes[k], whole[k]);
        }
        amplitudeUncertainty = Math.sqrt(output.quadratureVariance(1));
        AlignedInput aligned = new AlignedInput(output, input);
        mixing = aligned.isSine() ? null : new Mixing(aligned, count);
    }

    /** Number of harmonics. */
    int count() {
        return real.length - 1;
    }

    /**
     * Half the difference of the branches, as a series: cosine of odd harmonics, sine of even ones, in V.
     *
     * @return index k for harmonic k
     */
    double[] parts(Corners corners) {
        double[] re = real.clone();
        double[] im = imaginary.clone();
        double delay = corners.delay();
        double turnRe = Math.cos(delay);
        double turnIm = -Math.sin(delay);
        double delayRe = 1;
        double delayIm = 0;
        for (int k = 1; k < re.length; k++) {
            double next = delayRe * turnRe - delayIm * turnIm;
            delayIm = delayIm * turnRe + delayRe * turnIm;
            delayRe = next;
            if (raised[k]) {
                double inverseRe = corners.inverseReal();
                double inverseIm = corners.inverseImaginary(k);
                double factorRe = inverseRe * delayRe - inverseIm * delayIm;
                double factorIm = inverseIm * delayRe + inverseRe * delayIm;
                re[k] = real[k] * factorRe - imaginary[k] * factorIm;
                im[k] = imaginary[k] * factorRe + real[k] * factorIm;
            }
        }
        return mixing == null ? parts(re, im) : mixing.parts(re, im);
    }

    private static double[] parts(double[] real, double[] imaginary) {
        double[] parts = new double[real.length];
        for (int k = 1; k < parts.length; k++) {
            parts[k] = k % 2 == 1 ? real[k] : -imaginary[k];
        }
        return parts;
    }

    /** Sum of the squared amplitudes of the swing, V². */
    double power(Corners corners) {
        double sum = 0;
        for (int k = 1; k <= count(); k++) {
            sum += amplitudes[k] * amplitudes[k] * factor(k, corners);
        }
        return sum;
    }

    /** Variance of a part from noise, raised as the corners ask, V². */
    double variance(int k, Corners corners) {
        return whole[k] * factor(k, corners);
    }

    /** By how much the square of a harmonic is raised. Those that do not stand out of the noise are left as they are, for raising them would raise noise alone. */
    private double factor(int k, Corners corners) {
        return raised[k] ? corners.inversePower(k) : 1;
    }

    /**
     * The gap in percent: rms difference of the branches over equal input, over the rms of the swing, 2 sqrt(sum of the parts squared / sum of
     * the amplitudes squared), noise removed.
     */
    Measured gap(Corners corners) {
        double[] parts = parts(corners);
        NoisyPower sum = NoisyPower.ZERO;
        for (int k = 2; k <= count(); k++) {
            double raised = factor(k, corners);
            sum = sum.plus(NoisyPower.ofQuadrature(parts[k], random[k] * raised, whole[k] * raised));
        }
        return sum.over(Math.sqrt(power(corners)), amplitudeUncertainty, 200, Unit.PERCENT);
    }

    /** Half the distance of the branches at a phase, noise and all, V. */
    double distance(Corners corners, double cycles) {
        double[] parts = parts(corners);
        double sum = 0;
        for (int k = 1; k <= count(); k++) {
            double angle = 2 * Math.PI * k * cycles;
            sum += parts[k] * (k % 2 == 1 ? Math.cos(angle) : Math.sin(angle));
        }
        return sum;
    }
}
