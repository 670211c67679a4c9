package clipwitness.job;

import clipwitness.quantity.LimitQuantity;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * The limits of a job.
 *
 * @param onSheet those that the sheet sets; the others take their defaults
 */
public record Limits(Map<LimitQuantity, Double> onSheet) {
    /** Copies what it is given. */
    public Limits {
        Map<LimitQuantity, Double> copy = new EnumMap<>(LimitQuantity.class);
        copy.putAll(onSheet);
        onSheet = Collections.unmodifiableMap(copy);
    }

    /** The limit of a quantity, in its unit. */
    public double of(LimitQuantity quantity) {
        return onSheet.getOrDefault(quantity, quantity.standard());
    }

    /** Whether the limit is the default, because the sheet sets none. */
    public boolean isDefault(LimitQuantity quantity) {
        return !onSheet.containsKey(quantity);
    }
}
