package clipwitness.measure.clipper;

import java.util.Objects;

/** Two legs side by side, in opposite directions. */
public final class ClippingPair {
    private final ClipperLeg up;
    private final ClipperLeg down;
    private final Once<PairTable> upTable;
    private final Once<PairTable> downTable;

    /**
     * A pair.
     *
     * @param up   leg that conducts on positive voltage
     * @param down the other
     */
    public ClippingPair(ClipperLeg up, ClipperLeg down) {
        this(up, down, new Once<>(() -> PairTable.of(up, down)), new Once<>(() -> PairTable.of(down, up)));
    }

    private ClippingPair(ClipperLeg up, ClipperLeg down, Once<PairTable> upTable, Once<PairTable> downTable) {
        this.up = Objects.requireNonNull(up, "up");
        this.down = Objects.requireNonNull(down, "down");
        this.upTable = upTable;
        this.downTable = downTable;
    }

    /** Leg that conducts on positive voltage. */
    public ClipperLeg up() {
        return up;
    }

    /** The other leg. */
    public ClipperLeg down() {
        return down;
    }

    /** Current over positive voltage, of an upper leg that has devices. */
    PairTable upTable() {
        return upTable.get();
    }

    /** Current over negative voltage, both with the sign left out, of a lower leg that has devices. */
    PairTable downTable() {
        return downTable.get();
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
        return new ClippingPair(
                up.scaled(factor),
                down.scaled(factor),
                new Once<>(() -> upTable().scaled(factor)),
                new Once<>(() -> downTable().scaled(factor)));
    }

    /** The same pair with the voltages of one leg times a factor. */
    public ClippingPair unbalanced(double factor) {
        return new ClippingPair(up.scaled(factor), down);
    }
}
