package clipwitness.compare.result;

import clipwitness.capture.Condition;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.Remark;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One figure of a comparison under one condition.
 *
 * @param quantity               what was compared
 * @param condition              under which condition
 * @param change                 the change; for null depth the depth itself
 * @param limit                  limit, in the unit of the change
 * @param decision               what was decided
 * @param conformanceProbability probability that the true change lies within the limit (JCGM 106, 7.3 to 7.5)
 * @param remedy                 what would decide an undecided item
 * @param subject                what it is about, where there are several of the quantity under the condition
 */
public record Item(
        ItemQuantity quantity,
        Condition condition,
        Measured change,
        OptionalDouble limit,
        Decision decision,
        OptionalDouble conformanceProbability,
        Optional<Remark> remedy,
        Optional<ItemSubject> subject) {
    /** Checks that all parts are there. */
    public Item {
        Objects.requireNonNull(quantity, "quantity");
        Objects.requireNonNull(condition, "condition");
        Objects.requireNonNull(change, "change");
        Objects.requireNonNull(decision, "decision");
        Objects.requireNonNull(subject, "subject");
    }

    /** An item that is the only one of its quantity under its condition. */
    public Item(
            ItemQuantity quantity,
            Condition condition,
            Measured change,
            OptionalDouble limit,
            Decision decision,
            OptionalDouble conformanceProbability,
            Optional<Remark> remedy) {
        this(quantity, condition, change, limit, decision, conformanceProbability, remedy, Optional.empty());
    }

    /** The same item with what it is about. */
    public Item about(ItemSubject what) {
        return new Item(
                quantity, condition, change, limit, decision, conformanceProbability, remedy, Optional.of(what));
    }

    /** Whether the item was to be judged. */
    public boolean judged() {
        return decision != Decision.DESCRIBED;
    }
}
