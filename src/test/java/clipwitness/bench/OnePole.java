package clipwitness.bench;

import clipwitness.capture.Samples;

/**
 * A filter of the first order, 1 / (1 + j f/fc) or the rest of it.
 *
 * @param corner  fc in Hz, above 0
 * @param highPass whether low frequencies are kept away
 */
public record OnePole(double corner, boolean highPass) implements Block {
    /** Checks the corner. */
    public OnePole {
        if (!(corner > 0)) {
            throw new IllegalArgumentException("corner must be above 0 Hz but is " + corner);
        }
    }

    /** Passes what lies below a corner in Hz. */
    public static OnePole lowPass(double corner) {
        return new OnePole(corner, false);
    }

    /** Passes what lies above a corner in Hz. */
    public static OnePole highPass(double corner) {
        return new OnePole(corner, true);
    }

    /** What a voltage becomes once the filter has settled; exact for straight lines between the points. */
    @Override
    public Cycle of(Cycle cycle) {
        double[] in = cycle.points().toArray();
        double step = 2 * Math.PI * corner / (cycle.frequency() * in.length); // over the time constant
        double started = last(low(in, step, 0));
        double[] low = low(in, step, started / -Math.expm1(-step * in.length));
        double[] out = new double[in.length];
        for (int i = 0; i < in.length; i++) {
            out[i] = highPass ? in[i] - low[i] : low[i];
        }
        return new Cycle(cycle.frequency(), Samples.of(out));
    }

    /** The low pass over one period, from the value at the last point of the period before. */
    private static double[] low(double[] in, double step, double before) {
        double kept = Math.exp(-step);
        double mean = -Math.expm1(-step) / step;
        double[] out = new double[in.length];
        double previous = before;
        for (int i = 0; i < in.length; i++) {
            previous = kept * previous + (mean - kept) * in[(i + in.length - 1) % in.length] + (1 - mean) * in[i];
            out[i] = previous;
        }
        return out;
    }

    private static double last(double[] values) {
        return values[values.length - 1];
    }
}
