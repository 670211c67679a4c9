package clipwitness.measure.clipper;

import java.util.Objects;

/**
 * Two legs side by side, in opposite directions.
 *
 * @param up   leg that conducts on positive voltage
 * @param down the other
 */
public record ClippingPair(ClipperLeg up, ClipperLeg down) {
    /** Checks that both are there. */
    public ClippingPair {
        Objects.requireNonNull(up, "up");
        Objects.requireNonNull(down, "down");
    }

    /** Current through the pair, A, at a voltage across it, V: I_up(v) - I_down(-v). */
    public double currentAt(double voltage) {
        return up.currentAt(voltage) - down.currentAt(-voltage);
    }

    /**
     * Voltage across the pair and a conductance beside it where a current flows into both: g v + I(v) = i.
     *
     * @param amperes     i, A
     * @param conductance g, S, above 0
     */
    double voltageAt(double amperes, double conductance) {
        return amperes < 0 ? -voltage(down, up, -amperes, conductance) : voltage(up, down, amperes, conductance);
    }

    private static double voltage(ClipperLeg forward, ClipperLeg reverse, double amperes, double conductance) {
        return forward.voltageBeside(v -> conductance * v - reverse.currentAt(-v), amperes, amperes / conductance);
    }

    /** Slope dI/dV at 0 V, S. */
    public double conductanceAtZero() {
        return up.conductanceAtZero() + down.conductanceAtZero();
    }

    /** The same pair with all voltages times a factor. */
    ClippingPair scaled(double factor) {
        return new ClippingPair(up.scaled(factor), down.scaled(factor));
    }

    /** The same pair with the voltages of one leg times a factor. */
    public ClippingPair unbalanced(double factor) {
        return new ClippingPair(up.scaled(factor), down);
    }
}
