package clipwitness.measure.transfer;

import clipwitness.measure.wave.FittedWave;
import clipwitness.signal.HarmonicFit;
import clipwitness.signal.Root;

/**
 * The fitted input on the output's time axis: mean removed, the delay between the two fundamentals taken out, turned over where the unit
 * inverts, so that it rises with the output. Harmonics of the input that noise may have made are left out.
 */
final class AlignedInput {
    /** Where the crossing of an input that may be distorted is looked for, in cycles. */
    private static final double AROUND = 0.1;

    private final double[] cosines;
    private final double[] sines;
    private final double amplitude;
    private final double crossingVariance;
    private final double rising;
    private final double falling;

    AlignedInput(FittedWave output, FittedWave input) {
        HarmonicFit fit = input.fit();
        boolean inverting = LinearResponse.inverts(output, input);
        double sign = inverting ? -1 : 1;
        double start = (-Math.PI / 2 - fit.phase(1) + (inverting ? Math.PI : 0)) / (2 * Math.PI);
        cosines = new double[fit.count()];
        sines = new double[fit.count()];
        double evenVariance = 0;
        for (int k = 1; k <= cosines.length; k++) {
            if (k == 1 || fit.amplitude(k) > 3 * Math.sqrt(2 * input.quadratureVariance(k))) {
                double turn = 2 * Math.PI * k * start;
                double c = Math.cos(turn);
                double s = Math.sin(turn);
                cosines[k - 1] = sign * (fit.cosine(k) * c + fit.sine(k) * s);
                sines[k - 1] = sign * (fit.sine(k) * c - fit.cosine(k) * s);
                evenVariance += k % 2 == 0 ? input.quadratureVariance(k) : 0;
            }
        }
        amplitude = fit.amplitude(1);
        crossingVariance = evenVariance;
        rising = crossing(0);
        falling = crossing(0.5);
    }

    private double crossing(double near) {
        return Root.between(this::at, near - AROUND, near + AROUND).orElse(near);
    }

    /** Phase at which it rises through its mean, from the beginning of the output's mean cycle. */
    double rising() {
        return rising;
    }

    /** Phase at which it falls through its mean. */
    double falling() {
        return falling;
    }

    /**
     * Input from its mean, V.
     *
     * @param cycles phase from the beginning of the output's mean cycle
     */
    double at(double cycles) {
        double sum = 0;
        for (int k = 1; k <= cosines.length; k++) {
            if (cosines[k - 1] != 0 || sines[k - 1] != 0) {
                double angle = 2 * Math.PI * k * cycles;
                sum += cosines[k - 1] * Math.cos(angle) + sines[k - 1] * Math.sin(angle);
            }
        }
        return sum;
    }

    /** Whether nothing but the fundamental stands out of the noise. */
    boolean isSine() {
        for (int k = 2; k <= cosines.length; k++) {
            if (cosines[k - 1] != 0 || sines[k - 1] != 0) {
                return false;
            }
        }
        return true;
    }

    /**
     * Where the falling input has the value that the rising one has at a phase.
     *
     * @param rising phase from -0.25 to 0.25 cycles
     */
    double fallingLike(double rising) {
        double wanted = at(rising);
        return Root.between(cycles -> at(cycles) - wanted, 0.25, 0.75).orElse(0.5 - rising);
    }

    /** Variance of its mean over a rising and a falling crossing, V²: noise of even harmonics, for odd ones cancel and the mean is out. */
    double crossingVariance() {
        return crossingVariance;
    }

    /** Amplitude of the input's fundamental, V. */
    double amplitude() {
        return amplitude;
    }
}
