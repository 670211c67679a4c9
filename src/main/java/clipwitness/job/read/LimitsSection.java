package clipwitness.job.read;

import clipwitness.job.Limits;
import clipwitness.quantity.LimitQuantity;
import clipwitness.quantity.Unit;
import java.util.EnumMap;
import java.util.Map;

/** Reads the section {@code limits}. */
final class LimitsSection {
    private LimitsSection() {}

    static Limits read(Section section) {
        Map<LimitQuantity, Double> limits = new EnumMap<>(LimitQuantity.class);
        for (LimitQuantity quantity : LimitQuantity.values()) {
            section.field(quantity.key())
                    .ifPresent(f -> f.number(range(quantity)).ifPresent(limit -> limits.put(quantity, limit)));
        }
        return new Limits(limits);
    }

    private static AllowedRange range(LimitQuantity quantity) {
        Unit unit = quantity.unit();
        AllowedRange range = quantity.standard() < 0 ? AllowedRange.below(0, unit) : AllowedRange.above(0, unit);
        return quantity == LimitQuantity.ASYMMETRY ? range.orBare() : range;
    }
}
