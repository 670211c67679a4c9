package clipwitness.bench.circuit;

import clipwitness.bench.LegPair;

/** Voltage across a pair of legs over the source voltage behind a fixed resistance: solved at many places, cubic between them. */
final class ClampCurve {
    private static final int COUNT = 1_000;

    /** The places lie as equal steps of asinh(E / 50 mV): dense about zero, where the legs begin to conduct, wide far out. */
    private static final double DENSE = 0.05;

    private final double reach;
    private final double[] sources = new double[COUNT + 1];
    private final double[] voltages = new double[COUNT + 1];
    private final double[] slopes = new double[COUNT + 1];

    /**
     * Solves the pair.
     *
     * @param resistance Ω, above 0
     * @param most       largest source voltage that will be asked for, V
     */
    ClampCurve(LegPair pair, double resistance, double most) {
        reach = asinh(1.01 * most / DENSE);
        for (int i = 0; i <= COUNT; i++) {
            sources[i] = DENSE * Math.sinh(reach * (2.0 * i / COUNT - 1));
            voltages[i] = pair.voltageBehind(sources[i], resistance);
            double conductance = pair.up().at(voltages[i]).slope()
                    + pair.down().at(-voltages[i]).slope();
            slopes[i] = 1 / (1 + resistance * conductance);
        }
    }

    /** Voltage in V across the pair for a source in V. */
    double at(double source) {
        double place = (asinh(source / DENSE) / reach + 1) / 2 * COUNT;
        int i = (int) Math.max(0, Math.min(COUNT - 1, Math.floor(place)));
        double width = sources[i + 1] - sources[i];
        double t = (source - sources[i]) / width;
        double s = 1 - t;
        return s * s * ((1 + 2 * t) * voltages[i] + t * width * slopes[i])
                + t * t * ((1 + 2 * s) * voltages[i + 1] - s * width * slopes[i + 1]);
    }

    private static double asinh(double x) {
        return Math.copySign(Math.log(Math.abs(x) + Math.hypot(x, 1)), x);
    }
}
