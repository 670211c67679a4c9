package clipwitness.compare.finding;

import clipwitness.quantity.Unit;
import java.util.List;

/**
 * The even harmonics changed.
 *
 * @param subject states and condition
 * @param change  of the even harmonics over the fundamental, dB; significant
 */
public record EvenHarmonics(Subject subject, Difference change) implements Finding {
    @Override
    public String code() {
        return "even-harmonics";
    }

    @Override
    public String word() {
        return change.isRise() ? "higher" : "lower";
    }

    @Override
    public List<FindingValue> values() {
        return List.of(FindingValue.of("evenHarmonics", change, Unit.DECIBEL));
    }
}
