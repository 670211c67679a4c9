package clipwitness.measure.junction;

import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.Optional;

/** Tells curves that are no junction's: an open lead, nothing but floor, a resistor. */
final class CurveShape {
    private static final double STRAIGHT = 0.05;
    private static final int DIGITS = 3;
    private static final NumberText NUMBERS = NumberText.in("en");

    private CurveShape() {}

    /**
     * Why a curve is no junction's.
     *
     * @param all   all points
     * @param used  forward points above the floor, ascending in current
     * @param floor floor
     */
    static Optional<String> notAJunction(List<TracedPoint> all, List<TracedPoint> used, Floor floor) {
        if (used.isEmpty()) {
            double most =
                    all.stream().mapToDouble(p -> Math.abs(p.amperes())).max().orElse(0);
            return Optional.of(
                    most == 0
                            ? "no current flows at any voltage: an open lead or an open device"
                            : "the current never leaves the instrument's floor (at most "
                                    + NUMBERS.rounded(most, Unit.AMPERE, DIGITS)
                                    + "): an open lead or an open device");
        }
        return used.size() > 2 ? resistor(used) : Optional.empty();
    }

    /** A resistor: every point lies near the straight line through zero. */
    private static Optional<String> resistor(List<TracedPoint> used) {
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
                ? Optional.of("the current is proportional to the voltage: a resistor of "
                        + NUMBERS.rounded(ohms, Unit.OHM, DIGITS) + ", no junction")
                : Optional.empty();
    }
}
