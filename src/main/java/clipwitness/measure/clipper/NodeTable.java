package clipwitness.measure.clipper;

import clipwitness.signal.ShapePreservingInterpolation;
import java.util.ArrayList;
import java.util.List;

/**
 * Voltage across a clipping pair and a conductance beside it over the current into both, as a table: for a wave of many values, and for
 * many waves of one circuit, far less work than a root for each. The points follow the current of the leg that conducts, I = Is (exp(s) - 1), in
 * steps of s that are small beside what bends the curve; between them a monotone cubic.
 */
final class NodeTable {
    private static final double STEP = 0.05;
    private static final int OPEN_POINTS = 400;

    private final ShapePreservingInterpolation up;
    private final ShapePreservingInterpolation down;

    /**
     * A table.
     *
     * @param pair        pair
     * @param conductance what is beside it, S, above 0
     * @param highest     highest current into both that will be asked for, A, above 0
     */
    NodeTable(ClippingPair pair, double conductance, double highest) {
        this.up = side(pair.up(), pair.down(), conductance, highest);
        this.down = side(pair.down(), pair.up(), conductance, highest);
    }

    /** Voltage, V, at a current into pair and conductance, A. */
    double at(double amperes) {
        return amperes < 0 ? -down.value(-amperes) : up.value(amperes);
    }

    private static ShapePreservingInterpolation side(
            ClipperLeg forward, ClipperLeg reverse, double conductance, double highest) {
        List<Double> amperes = new ArrayList<>(List.of(0.0));
        List<Double> volts = new ArrayList<>(List.of(0.0));
        for (int i = 1; last(amperes) < highest; i++) {
            double v = forward.isOpen()
                    ? highest / conductance * Math.pow((double) i / OPEN_POINTS, 2)
                    : forward.voltageAt(forward.current(STEP * i));
            double through = forward.isOpen() ? 0 : forward.current(STEP * i);
            double sum = through + conductance * v - reverse.currentAt(-v);
            if (sum > last(amperes) && v > last(volts)) {
                amperes.add(sum);
                volts.add(v);
            }
        }
        return new ShapePreservingInterpolation(plain(amperes), plain(volts));
    }

    private static double last(List<Double> values) {
        return values.get(values.size() - 1);
    }

    private static double[] plain(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
