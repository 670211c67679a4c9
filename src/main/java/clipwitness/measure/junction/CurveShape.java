package clipwitness.measure.junction;

import clipwitness.quantity.Unit;
import clipwitness.reason.Argument;
import clipwitness.reason.DeviceReason;
import clipwitness.reason.Reason;
import java.util.List;
import java.util.Optional;

/** Recognises curves that are not those of a junction: an open lead, nothing but floor, a resistor. */
final class CurveShape {
    private static final double STRAIGHT = 0.05;
    private static final int DIGITS = 3;

    private CurveShape() {}

    /**
     * Why a curve is no junction's.
     *
     * @param all   all points
     * @param used  forward points above the floor, ascending in current
     * @param floor floor
     */
    static Optional<Reason> notAJunction(List<TracedPoint> all, List<TracedPoint> used, Floor floor) {
        if (used.isEmpty()) {
            double most =
                    all.stream().mapToDouble(p -> Math.abs(p.amperes())).max().orElse(0);
            return Optional.of(
                    most == 0
                            ? Reason.of(DeviceReason.NO_CURRENT)
                            : Reason.of(DeviceReason.CURRENT_IN_FLOOR, Argument.prefixed(most, Unit.AMPERE, DIGITS)));
        }
        return used.size() > 2 ? resistor(used) : Optional.empty();
    }

    /** A resistor: every point lies near the straight line through zero. */
    private static Optional<Reason> resistor(List<TracedPoint> used) {
        double square = 0;
        double product = 0;
        for (TracedPoint p : used) {
            square += p.amperes() * p.amperes();
            product += p.amperes() * p.volts();
        }
        double ohms = product / square;
        double span = used.get(used.size() - 1).volts();
        boolean straight = used.stream().allMatch(p -> Math.abs(p.volts() - ohms * p.amperes()) < STRAIGHT * span);
        return straight
                ? Optional.of(Reason.of(DeviceReason.RESISTOR, Argument.prefixed(ohms, Unit.OHM, DIGITS)))
                : Optional.empty();
    }
}
