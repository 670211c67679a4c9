package clipwitness.measure.clipper;

import java.util.function.DoubleUnaryOperator;

/** Highest and lowest value of a predicted wave: at the ends of its half cycle, or where a parabola through the places about the extreme one has its vertex. */
final class PredictedPeaks {
    private final DoubleUnaryOperator wave;
    private final double[] volts;

    /**
     * The peaks of a wave.
     *
     * @param wave  output, V, over the cosine of the phase
     * @param volts its values in the middle of even steps over half a cycle
     */
    PredictedPeaks(DoubleUnaryOperator wave, double[] volts) {
        this.wave = wave;
        this.volts = volts;
    }

    /** Highest value, V. */
    double highest() {
        return extreme(1);
    }

    /** Lowest value, V. */
    double lowest() {
        return -extreme(-1);
    }

    private double extreme(int sign) {
        double highest = Math.max(sign * wave.applyAsDouble(1), sign * wave.applyAsDouble(-1));
        for (int i = 1; i < volts.length - 1; i++) {
            double here = sign * volts[i];
            double before = sign * volts[i - 1];
            double after = sign * volts[i + 1];
            if (here >= before && here >= after) {
                highest = Math.max(highest, Math.max(here, sign * atVertex(i, before, here, after)));
            }
        }
        return highest;
    }

    private double atVertex(int place, double before, double here, double after) {
        double bend = 2 * here - before - after;
        double off = bend > 0 ? (after - before) / (2 * bend) : 0;
        return wave.applyAsDouble(Math.cos(Math.PI * (place + 0.5 + off) / volts.length));
    }
}
