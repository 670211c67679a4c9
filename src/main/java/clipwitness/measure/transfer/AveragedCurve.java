package clipwitness.measure.transfer;

import clipwitness.capture.Samples;
import clipwitness.measure.wave.FittedWave;
import clipwitness.signal.HarmonicFit;

/**
 * The averaged curve of both branches, as a picture shows it.
 *
 * @param input  input from its mean, V, ascending
 * @param output output, V
 * @param gap    largest distance of the branches over the output's swing
 */
record AveragedCurve(Samples input, Samples output, double gap) {
    static AveragedCurve of(FittedWave output, AlignedInput aligned) {
        double[] cycle = output.cycle().values();
        int half = cycle.length / 2;
        double[] x = new double[half];
        double[] y = new double[half];
        for (int i = 0; i < half; i++) {
            int rising = Math.floorMod(i - half / 2, cycle.length);
            int falling = Math.floorMod(half - 1 - rising, cycle.length);
            double phase = phase(i, half);
            x[i] = (aligned.at(phase) + aligned.at(0.5 - phase)) / 2;
            y[i] = (cycle[rising] + cycle[falling]) / 2;
        }
        return new AveragedCurve(Samples.of(x), Samples.of(y), gap(output, half));
    }

    /** Phase of place i of the rising branch, from a quarter period before the middle to a quarter after it. */
    private static double phase(int i, int half) {
        return (i + 0.5) / (2 * half) - 0.25;
    }

    private static double gap(FittedWave output, int half) {
        HarmonicFit fit = output.fit();
        double gap = 0;
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < half; i++) {
            double rising = fit.at(output.origin() + phase(i, half));
            double falling = fit.at(output.origin() + 0.5 - phase(i, half));
            gap = Math.max(gap, Math.abs(rising - falling));
            lowest = Math.min(lowest, Math.min(rising, falling));
            highest = Math.max(highest, Math.max(rising, falling));
        }
        return gap / (highest - lowest);
    }
}
