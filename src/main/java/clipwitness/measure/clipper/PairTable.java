package clipwitness.measure.clipper;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Current through one side of a clipping pair over its voltage, at points that follow the current of the leg that conducts, I = Is (exp(s) - 1), in steps of s
 * that are small beside what bends the curve. A pair has one table, whatever is beside it.
 */
final class PairTable {
    private static final double STEP = 0.05;

    /** No clipping stage drives so much through its diodes, A. */
    private static final double MOST_CURRENT = 100;

    private final double[] volts;
    private final double[] amperes;

    /** Voltage and current through both legs at each point, both ascending from 0. */
    private PairTable(double[] volts, double[] amperes) {
        this.volts = volts;
        this.amperes = amperes;
    }

    /**
     * The side on which a leg conducts that has devices.
     *
     * @param reverse the other leg
     */
    static PairTable of(ClipperLeg forward, ClipperLeg reverse) {
        List<Double> volts = new ArrayList<>(List.of(0.0));
        List<Double> amperes = new ArrayList<>(List.of(0.0));
        for (int i = 1; amperes.get(amperes.size() - 1) < MOST_CURRENT; i++) {
            double through = forward.current(STEP * i);
            double v = forward.voltageAt(through);
            double sum = through - reverse.currentAt(-v);
            if (sum > amperes.get(amperes.size() - 1) && v > volts.get(volts.size() - 1)) {
                volts.add(v);
                amperes.add(sum);
            }
        }
        return new PairTable(plain(volts), plain(amperes));
    }

    private static double[] plain(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Voltages of the points, ascending from 0, V. */
    double[] volts() {
        return volts.clone();
    }

    /** The same with all voltages times a factor. */
    PairTable scaled(double factor) {
        return new PairTable(Arrays.stream(volts).map(v -> v * factor).toArray(), amperes);
    }

    /** Current into the side and a conductance beside it at each point, A. */
    double[] with(double conductance) {
        double[] sums = new double[volts.length];
        Arrays.setAll(sums, i -> amperes[i] + conductance * volts[i]);
        return sums;
    }
}
