package clipwitness.bench.circuit;

import clipwitness.bench.Block;
import clipwitness.bench.Cycle;
import clipwitness.capture.Samples;

/**
 * An amplifier whose output moves no faster than so much.
 *
 * @param limit V/s, above 0; may be infinite
 */
record Slew(double limit) implements Block {
    private static final int MOST_PERIODS = 500;
    private static final double SETTLED = 1e-9;

    @Override
    public Cycle of(Cycle cycle) {
        double[] in = cycle.points().toArray();
        double most = limit / (cycle.frequency() * in.length);
        double[] out = new double[in.length];
        double last = in[0];
        double before = Double.POSITIVE_INFINITY;
        for (int n = 0; n < MOST_PERIODS && Math.abs(last - before) > SETTLED; n++) {
            before = last;
            for (int i = 0; i < in.length; i++) {
                last += Math.max(-most, Math.min(most, in[i] - last));
                out[i] = last;
            }
        }
        return new Cycle(cycle.frequency(), Samples.of(out));
    }
}
