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
    private static final int SETTLING = 3;

    @Override
    public Cycle of(Cycle cycle) {
        double[] in = cycle.points().toArray();
        double most = limit / (cycle.frequency() * in.length);
        double[] out = new double[in.length];
        double last = in[0];
        for (int i = 0; i < SETTLING * in.length; i++) {
            int at = i % in.length;
            last += Math.max(-most, Math.min(most, in[at] - last));
            out[at] = last;
        }
        return new Cycle(cycle.frequency(), Samples.of(out));
    }
}
