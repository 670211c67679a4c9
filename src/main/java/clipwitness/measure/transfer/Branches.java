package clipwitness.measure.transfer;

import clipwitness.measure.Measured;
import clipwitness.measure.wave.FittedWave;
import clipwitness.measure.wave.NoisyPower;
import clipwitness.quantity.Unit;
import clipwitness.signal.HarmonicFit;
import org.apache.commons.math3.complex.Complex;

/**
 * How far the rising and the falling branch of a transfer curve part. Over a sine as input, counted from where it goes up through its mean, the
 * branches differ by the cosines of odd harmonics and the sines of even ones, twice each; a distorted input mixes them.
 */
final class Branches {
    private static final int PLACES = 256;

    private final Complex[] harmonics;
    private final double[] random;
    private final double[] whole;
    private final double[] amplitudes;
    private final boolean[] raised;
    private final double amplitudeUncertainty;
    private final Complex[][] mixing;

    Branches(FittedWave output, FittedWave input) {
        int count = output.count();
        HarmonicFit fit = output.fit();
        harmonics = new Complex[count + 1];
        random = new double[count + 1];
        whole = new double[count + 1];
        amplitudes = new double[count + 1];
        raised = new boolean[count + 1];
        double ofPhase = output.quadratureVariance(1) / Math.pow(fit.amplitude(1), 2);
        for (int k = 1; k <= count; k++) {
            double turn = 2 * Math.PI * k * output.origin();
            harmonics[k] =
                    new Complex(fit.cosine(k), -fit.sine(k)).multiply(new Complex(Math.cos(turn), Math.sin(turn)));
            double delayed = Math.pow(k * fit.amplitude(k), 2) * ofPhase;
            random[k] = fit.quadratureVariance(k) * Math.pow(output.rest().at(k), 2) + delayed;
            whole[k] = output.quadratureVariance(k) + delayed;
            amplitudes[k] = harmonics[k].abs();
            raised[k] = FittedWave.standsOut(amplitudes[k], whole[k]);
        }
        amplitudeUncertainty = Math.sqrt(output.quadratureVariance(1));
        AlignedInput aligned = new AlignedInput(output, input);
        mixing = aligned.isSine() ? new Complex[0][] : mixing(aligned, count);
    }

    /** Number of harmonics. */
    int count() {
        return harmonics.length - 1;
    }

    /**
     * Half the difference of the branches, as a series: cosine of odd harmonics, sine of even ones, in V.
     *
     * @return index k for harmonic k
     */
    double[] parts(Corners corners) {
        Complex[] straight = harmonics.clone();
        double delay = corners.delay();
        for (int k = 1; k <= count(); k++) {
            if (raised[k]) {
                straight[k] = harmonics[k].multiply(corners.undelayed(k, delay));
            }
        }
        double[] parts = new double[count() + 1];
        for (int k = 1; k <= count(); k++) {
            parts[k] = mixing.length == 0 ? part(straight, k) : mixed(straight, k);
        }
        return parts;
    }

    private static double part(Complex[] straight, int k) {
        return k % 2 == 1 ? straight[k].getReal() : -straight[k].getImaginary();
    }

    private double mixed(Complex[] straight, int k) {
        double sum = 0;
        for (int l = 1; l < straight.length; l++) {
            sum += straight[l].multiply(mixing[k][l]).getReal();
        }
        return sum;
    }

    /** Share of each harmonic in each part, where equal inputs do not lie at mirrored phases. */
    private static Complex[][] mixing(AlignedInput input, int count) {
        Complex[][] mixing = new Complex[count + 1][count + 1];
        for (Complex[] row : mixing) {
            java.util.Arrays.fill(row, Complex.ZERO);
        }
        for (int i = 0; i < PLACES; i++) {
            double rising = (i + 0.5) / (2 * PLACES) - 0.25;
            double falling = input.fallingLike(rising);
            for (int l = 1; l <= count; l++) {
                Complex difference = turn(l * rising).subtract(turn(l * falling));
                for (int k = 1; k <= count; k++) {
                    double angle = 2 * Math.PI * k * rising;
                    double basis = k % 2 == 1 ? Math.cos(angle) : Math.sin(angle);
                    mixing[k][l] = mixing[k][l].add(difference.multiply(basis / PLACES));
                }
            }
        }
        return mixing;
    }

    private static Complex turn(double cycles) {
        return new Complex(Math.cos(2 * Math.PI * cycles), Math.sin(2 * Math.PI * cycles));
    }

    /** Sum of the squared amplitudes of the swing, V². */
    double power(Corners corners) {
        double sum = 0;
        for (int k = 1; k <= count(); k++) {
            double amplitude = amplitudes[k] * factor(k, corners);
            sum += amplitude * amplitude;
        }
        return sum;
    }

    /** Variance of a part from noise, raised as the corners ask, V². */
    double variance(int k, Corners corners) {
        return whole[k] * Math.pow(factor(k, corners), 2);
    }

    /** Harmonics that do not stand out of the noise are left as they are, for raising them would raise noise alone. */
    private double factor(int k, Corners corners) {
        return raised[k] ? corners.inverse(k).abs() : 1;
    }

    /**
     * The gap in percent: rms difference of the branches over equal input, over the rms of the swing, 2 sqrt(sum of the parts squared / sum of
     * the amplitudes squared), noise removed.
     */
    Measured gap(Corners corners) {
        double[] parts = parts(corners);
        NoisyPower sum = NoisyPower.ZERO;
        for (int k = 2; k <= count(); k++) {
            double raised = Math.pow(factor(k, corners), 2);
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
