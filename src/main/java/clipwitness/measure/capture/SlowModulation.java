package clipwitness.measure.capture;

import clipwitness.capture.Samples;
import clipwitness.signal.MeanCycle;
import clipwitness.signal.SlowWave;

/**
 * How far a slow wave moves the harmonics of the tone that it runs under. A stage in clipping is bent by it: its harmonics follow the slow wave,
 * c_k + d_k s(t), and where s(t) is not 0 on average over the record, the mean cycle holds harmonics that the stage does not make without
 * it. Whether it does is seen in the harmonics above the fundamental, which a drift that was taken out still touches. d_k is the least-squares coefficient of s(t) e^(i k w t) in what the mean cycle leaves, s(t) less its mean.
 *
 * @param slopes |d_k| from k = 1, freed of noise; all 0 where noise explains them
 * @param ofMean d_0, of what of the slow wave is still in the record
 */
record SlowModulation(Samples slopes, double ofMean) {
    /** Standard deviations above what noise makes of all harmonics together, from which on a modulation is real. */
    private static final double REAL = 5;

    /** A drift that was taken out leaves slopes of 2 % of it in a short record; a stage in clipping has some of 100 %. */
    private static final double LEAST_SHARE = 0.1;

    /**
     * Looks for it.
     *
     * @param samples   the record, what of the slow wave was found in it taken out
     * @param cycle     its mean cycle
     * @param slow      the slow wave
     * @param harmonics how many
     * @param gain      of the tone from where the slow wave is to the record: a slope that is small against it is what taking out leaves
     */
    static SlowModulation of(Samples samples, MeanCycle cycle, SlowWave slow, int harmonics, double gain) {
        double[] left = new double[samples.size()];
        cycle.residuals(samples, 1, left.length, left);
        double[] wave = centred(slow, left.length);
        double energy = 0;
        for (double s : wave) {
            energy += s * s;
        }
        double ofNoise = 4 * cycle.noise() * cycle.noise() / energy;
        double[] squares = new double[harmonics];
        double sum = 0;
        for (int k = 1; k <= harmonics; k++) {
            squares[k - 1] = square(left, wave, 2 * Math.PI * k * cycle.cyclesPerSample()) * 4 / energy / energy;
            sum += k > 1 ? squares[k - 1] : 0;
        }
        boolean real = sum > ofNoise * (harmonics + REAL * Math.sqrt(harmonics)) && Math.sqrt(sum) > LEAST_SHARE * gain;
        return new SlowModulation(
                Samples.of(squares).map(s -> real ? Math.sqrt(Math.max(0, s - ofNoise)) : 0),
                Math.sqrt(square(left, wave, 0)) / energy);
    }

    private static double[] centred(SlowWave slow, int length) {
        double[] wave = new double[length];
        double mean = 0;
        for (int i = 0; i < length; i++) {
            wave[i] = slow.at((i + 0.5) / length);
            mean += wave[i] / length;
        }
        for (int i = 0; i < length; i++) {
            wave[i] -= mean;
        }
        return wave;
    }

    /** |sum of left s e^(-i a n)|², a the angle of one sample. */
    private static double square(double[] left, double[] wave, double angle) {
        double turnCos = Math.cos(angle);
        double turnSin = Math.sin(angle);
        double cos = 1;
        double sin = 0;
        double real = 0;
        double imaginary = 0;
        for (int i = 0; i < left.length; i++) {
            double product = Double.isNaN(left[i]) ? 0 : left[i] * wave[i];
            real += product * cos;
            imaginary += product * sin;
            double next = cos * turnCos - sin * turnSin;
            sin = sin * turnCos + cos * turnSin;
            cos = next;
        }
        return real * real + imaginary * imaginary;
    }

    /** Whether the slow wave moves anything. */
    boolean isReal() {
        return slopes.maximum() > 0;
    }
}
