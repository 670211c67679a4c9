package clipwitness.compare.result;

import clipwitness.capture.Samples;
import clipwitness.measure.clipper.ClippingPair;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Current through a clipping pair over the voltage across it.
 *
 * @param volts   rising, V
 * @param amperes as many, A
 */
public record PairCurve(Samples volts, Samples amperes) {
    private static final double MOST_CURRENT = 1e-3;
    private static final double MOST_VOLTS = 6;
    private static final double STEP = 0.005;
    private static final int OPEN_STEPS = 200;

    /** Checks that both are of one length. */
    public PairCurve {
        if (volts.size() != amperes.size()) {
            throw new IllegalArgumentException("a curve needs as many voltages as currents");
        }
    }

    /** The curve of a pair in steps of 5 mV, to 1 mA to both sides or to 1 V where a leg conducts less at 6 V. */
    public static PairCurve of(ClippingPair pair) {
        double[] volts = IntStream.rangeClosed(-end(pair, -1), end(pair, 1))
                .mapToDouble(i -> i * STEP)
                .toArray();
        double[] amperes = DoubleStream.of(volts).map(pair::currentAt).toArray();
        return new PairCurve(Samples.of(volts), Samples.of(amperes));
    }

    private static int end(ClippingPair pair, int sign) {
        if (Math.abs(pair.currentAt(sign * MOST_VOLTS)) < MOST_CURRENT) {
            return OPEN_STEPS;
        }
        int steps = 1;
        while (Math.abs(pair.currentAt(sign * steps * STEP)) < MOST_CURRENT) {
            steps++;
        }
        return steps;
    }
}
