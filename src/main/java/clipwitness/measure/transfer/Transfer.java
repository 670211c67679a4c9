package clipwitness.measure.transfer;

import clipwitness.capture.Samples;
import clipwitness.measure.wave.FittedWave;
import clipwitness.signal.HarmonicFit;
import clipwitness.signal.WeightedPoints;

/**
 * Output against input: single points from all periods for the fits, and the averaged curve of both branches.
 *
 * @param points    input from its mean and output of all samples, V
 * @param input     averaged curve: input from its mean, V, ascending
 * @param output    averaged curve: output, V
 * @param gap       largest distance of the branches over the output's swing
 * @param inverting whether the input was turned over
 * @param scatter   scatter of one sample of the output, V; with that share of the converter step
 * @param undithered what the converter step adds to one value where noise does not dither it, V
 * @param amplitude amplitude of the input, V
 * @param stretches stretches of the points
 */
record Transfer(
        WeightedPoints points,
        Samples input,
        Samples output,
        double gap,
        boolean inverting,
        double scatter,
        double undithered,
        double amplitude,
        Stretches stretches) {

    static Transfer of(FittedWave output, FittedWave input) {
        return of(output, new Inputs(output, input));
    }

    /** The same of one of several outputs over the same inputs. */
    static Transfer of(FittedWave output, Inputs inputs) {
        AlignedInput aligned = inputs.aligned();
        WeightedPoints points = inputs.over(output.cycle().points());
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
        return new Transfer(
                points,
                Samples.of(x),
                Samples.of(y),
                gap(output, half),
                inputs.inverting(),
                Math.hypot(output.scatter(), output.undithered()),
                output.undithered(),
                aligned.amplitude(),
                inputs.stretches(points));
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

    /** The curve seen from the other end, so that its lower half becomes the upper one. */
    Transfer mirrored() {
        return new Transfer(
                points.mirrored(),
                backwards(input),
                backwards(output),
                gap,
                inverting,
                scatter,
                undithered,
                amplitude,
                stretches.mirrored());
    }

    private static Samples backwards(Samples samples) {
        double[] turned = new double[samples.size()];
        for (int i = 0; i < turned.length; i++) {
            turned[i] = -samples.at(turned.length - 1 - i);
        }
        return Samples.of(turned);
    }
}
