package clipwitness.compare.result;

import clipwitness.capture.Condition;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.Remark;
import java.util.Objects;
import java.util.Optional;

/**
 * What captures like those before the work can tell about one quantity under one condition.
 *
 * @param quantity       quantity that has a limit
 * @param condition      condition
 * @param limit          limit, in the unit of the quantity
 * @param smallestChange the smallest change that can be detected: the expanded uncertainty that the change will have; for null depth the
 *                       depth above which a difference shows, dB
 * @param sufficient     whether that lies within the limit
 * @param remedy         what would make it so, where it does not
 */
public record ReadyItem(
        ItemQuantity quantity,
        Condition condition,
        double limit,
        Measured smallestChange,
        boolean sufficient,
        Optional<Remark> remedy) {
    /** Checks that all parts are there. */
    public ReadyItem {
        Objects.requireNonNull(quantity, "quantity");
        Objects.requireNonNull(condition, "condition");
        Objects.requireNonNull(smallestChange, "smallestChange");
        Objects.requireNonNull(remedy, "remedy");
    }
}
