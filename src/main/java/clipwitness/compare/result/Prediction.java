package clipwitness.compare.result;

import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A figure as the devices predict it, beside the measured one.
 *
 * @param quantity  its name in the results
 * @param order     order of a harmonic
 * @param predicted what the devices predict
 * @param measured  what was measured
 */
public record Prediction(String quantity, OptionalInt order, Measured predicted, Measured measured) {
    /** Checks that all parts are there. */
    public Prediction {
        Objects.requireNonNull(quantity, "quantity");
        Objects.requireNonNull(order, "order");
        Objects.requireNonNull(predicted, "predicted");
        Objects.requireNonNull(measured, "measured");
    }

    /** Unit of both. */
    public Unit unit() {
        return predicted.unit();
    }

    /** Expanded uncertainty, k = 2, of predicted less measured; of the prediction alone where nothing was measured. */
    public OptionalDouble expandedUncertainty() {
        if (predicted.asValue().isEmpty()) {
            return OptionalDouble.empty();
        }
        double own = predicted.expandedUncertainty().orElseThrow();
        return OptionalDouble.of(Math.hypot(own, measured.expandedUncertainty().orElse(0)));
    }

    /** Whether noise leaves no more than a bound of what was measured. */
    public boolean isBound() {
        return measured.asValue().filter(Measured.Value::isUpperBound).isPresent();
    }

    /** Predicted less measured, where both are known, and what was measured is more than a bound. */
    public OptionalDouble difference() {
        return predicted.value().isPresent() && measured.value().isPresent() && !isBound()
                ? OptionalDouble.of(
                        predicted.value().getAsDouble() - measured.value().getAsDouble())
                : OptionalDouble.empty();
    }

    /** Whether both agree within the uncertainty of their difference, or the prediction may lie below the bound of what was measured; nothing where one is not known. */
    public Optional<Boolean> agrees() {
        if (isBound()) {
            double bound = measured.asValue().orElseThrow().shown();
            return predicted.asValue().map(p -> p.number() - p.expanded() <= bound);
        }
        return difference().isPresent()
                ? Optional.of(Math.abs(difference().getAsDouble())
                        <= expandedUncertainty().orElseThrow())
                : Optional.empty();
    }
}
