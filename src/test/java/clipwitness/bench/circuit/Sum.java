package clipwitness.bench.circuit;

import clipwitness.bench.Cycle;
import clipwitness.capture.Samples;

/** Two paths that come together. */
final class Sum {
    private Sum() {}

    /** The sum of two voltages of the same period. */
    static Cycle of(Cycle one, Cycle other) {
        double[] sum = one.points().toArray();
        double[] more = other.points().toArray();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += more[i];
        }
        return new Cycle(one.frequency(), Samples.of(sum));
    }
}
