package clipwitness.compare.finding;

import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import java.util.List;

/**
 * At which setting the later state distorts as the earlier one does at another.
 *
 * @param subject         states, and the condition with the earlier state's setting
 * @param fromGainPercent setting of the earlier state, percent of rotation
 * @param toGainPercent   setting of the later state, percent of rotation
 */
public record EqualGain(Subject subject, double fromGainPercent, Measured.Value toGainPercent) implements Finding {
    @Override
    public String code() {
        return "equal-gain";
    }

    @Override
    public String word() {
        return toGainPercent.number() < fromGainPercent ? "lower" : "higher";
    }

    @Override
    public List<FindingValue> values() {
        return List.of(
                FindingValue.stated("fromGainPercent", fromGainPercent, Unit.PERCENT),
                FindingValue.of("toGainPercent", toGainPercent));
    }
}
