package clipwitness.compare.finding;

import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import java.util.List;

/**
 * A wave that swings nearly as far as the rails reach, so that they may clip it.
 *
 * @param subject states, and where the wave swings most
 * @param swing   from peak to peak, V
 * @param span    from the lowest rail, or ground, to the highest, V
 */
public record Headroom(Subject subject, Measured.Value swing, double span) implements Finding {
    @Override
    public String code() {
        return "headroom";
    }

    @Override
    public String word() {
        return "near-the-rails";
    }

    @Override
    public List<FindingValue> values() {
        return List.of(FindingValue.of("swing", swing), FindingValue.stated("span", span, Unit.VOLT));
    }
}
