package clipwitness.job.read;

import clipwitness.job.Limits;
import clipwitness.quantity.LimitQuantity;
import clipwitness.quantity.Unit;
import java.util.EnumMap;
import java.util.Map;

/** Reads the section {@code limits}. */
final class LimitsSection {
    /** No change that a double could not hold, and more than anybody sets to leave a change unjudged. */
    private static final double MOST = 300;

    /** A null depth nearer to 0 would be met by any two waves. */
    private static final double LEAST_DEPTH = -0.1;

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
        AllowedRange range = quantity.standard() < 0
                ? AllowedRange.between(-MOST, LEAST_DEPTH, unit)
                : AllowedRange.above(0, unit).to(MOST);
        return quantity == LimitQuantity.ASYMMETRY ? range.orBare() : range;
    }
}
