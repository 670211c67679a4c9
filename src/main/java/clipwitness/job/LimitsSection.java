package clipwitness.job;

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

    private static Range range(LimitQuantity quantity) {
        Unit unit = quantity.unit();
        Range range = quantity.standard() < 0 ? Range.below(0, unit) : Range.above(0, unit);
        return quantity == LimitQuantity.ASYMMETRY ? range.orBare() : range;
    }
}
