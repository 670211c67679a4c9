package clipwitness.measure.clipper;

import clipwitness.signal.ShapePreservingInterpolation;
import java.util.Arrays;

/**
 * Voltage across a clipping pair and a conductance beside it over the current into both, as a table: for a wave of many values, and for
 * many waves of one circuit, far less work than a root for each. Between the points of {@link PairTable} a monotone cubic.
 */
final class NodeTable {
    private static final int OPEN_POINTS = 400;

    private final ClippingPair pair;
    private final double conductance;
    private final Side up;
    private final Side down;

    /**
     * A table.
     *
     * @param pair        pair
     * @param conductance what is beside it, S, above 0
     * @param highest     highest current into both that will be asked for, A, above 0
     */
    NodeTable(ClippingPair pair, double conductance, double highest) {
        this.pair = pair;
        this.conductance = conductance;
        this.up = pair.up().isOpen()
                ? open(pair.down(), conductance, highest)
                : Side.of(pair.upTable().with(conductance), pair.upTable().volts());
        this.down = pair.down().isOpen()
                ? open(pair.up(), conductance, highest)
                : Side.of(pair.downTable().with(conductance), pair.downTable().volts());
    }

    /** Volts over amperes of one direction, and the highest current that it has. */
    private record Side(ShapePreservingInterpolation curve, double highest) {
        static Side of(double[] amperes, double[] volts) {
            return new Side(new ShapePreservingInterpolation(amperes, volts), amperes[amperes.length - 1]);
        }
    }

    /** Voltage, V, at a current into pair and conductance, A. */
    double at(double amperes) {
        Side side = amperes < 0 ? down : up;
        double magnitude = Math.abs(amperes);
        return magnitude <= side.highest
                ? Math.signum(amperes) * side.curve.value(magnitude)
                : pair.voltageAt(amperes, conductance);
    }

    /** Where no leg conducts, the conductance takes nearly all, and the other leg what it lets through in reverse. */
    private static Side open(ClipperLeg reverse, double conductance, double highest) {
        double[] volts = new double[OPEN_POINTS + 1];
        Arrays.setAll(volts, i -> highest / conductance * Math.pow((double) i / OPEN_POINTS, 2));
        double[] amperes = new double[volts.length];
        Arrays.setAll(amperes, i -> conductance * volts[i] - reverse.currentAt(-volts[i]));
        return Side.of(amperes, volts);
    }
}
