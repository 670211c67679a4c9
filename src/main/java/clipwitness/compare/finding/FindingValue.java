package clipwitness.compare.finding;

import clipwitness.compare.result.Item;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A figure that a finding rests on.
 *
 * @param name                name in the results
 * @param value               finite, in the unit
 * @param unit                unit
 * @param expandedUncertainty k = 2, in the unit; empty for what was set, not measured
 * @param isUpperBound        noise bounds the figure: what it stands for lies below value + U
 */
public record FindingValue(
        String name, double value, Unit unit, OptionalDouble expandedUncertainty, boolean isUpperBound) {
    /** Checks that the value is finite. */
    public FindingValue {
        Objects.requireNonNull(unit, "unit");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be finite but is " + value);
        }
    }

    /** The change of an item, under the name of its quantity. */
    public static FindingValue of(Item item) {
        return of(item.quantity().key(), item.change().asValue().orElseThrow());
    }

    /** A measured value. */
    public static FindingValue of(String name, Measured.Value value) {
        return new FindingValue(name, value.number(), value.unit(), value.expandedUncertainty(), value.isUpperBound());
    }

    /** What was set, or counts as a limit. */
    public static FindingValue stated(String name, double value, Unit unit) {
        return new FindingValue(name, value, unit, OptionalDouble.empty(), false);
    }

    /** A figure with its expanded uncertainty. */
    public static FindingValue known(String name, double value, Unit unit, double expandedUncertainty) {
        return new FindingValue(name, value, unit, OptionalDouble.of(expandedUncertainty), false);
    }

    /** A difference; where noise bounds it, what it is at least, with its sign and a name that says so. */
    public static FindingValue of(String name, Difference difference, Unit unit) {
        return difference.bounded()
                ? stated(name + "AtLeast", Math.copySign(difference.least(), difference.change()), unit)
                : known(name, difference.change(), unit, difference.uncertainty());
    }
}
