package clipwitness.compare.finding;

import clipwitness.compare.result.Item;
import clipwitness.quantity.ItemQuantity;
import java.util.List;
import java.util.Optional;

/**
 * How far a judged figure of an unchanged state moved.
 *
 * @param subject  states, and where it reaches farthest
 * @param farthest the change that reaches farthest, among those beyond the limit where there are any
 * @param beyond   whether it is beyond the limit
 * @param settings where it moved so far, and where it was judged
 * @param figures  the figure of both states there, where it is beyond the limit or shows halves that were unequal before, too
 * @param part     whether some settings were left unjudged because there is next to no distortion in both states
 * @param reshaped whether the wave has another shape beyond its limit
 */
public record Moved(
        Subject subject,
        Item farthest,
        boolean beyond,
        Settings settings,
        Optional<Difference> figures,
        boolean part,
        boolean reshaped)
        implements Finding {
    /** Whether it is as much distortion as before in a wave of another shape. */
    public boolean otherKind() {
        return reshaped && !beyond && farthest.quantity() == ItemQuantity.THD;
    }

    /** Which way it moved, where that is beyond the limit. */
    public Optional<Telling.Kind> way() {
        return beyond ? Optional.of(Items.isFall(farthest) ? Telling.Kind.LESS : Telling.Kind.MORE) : Optional.empty();
    }

    @Override
    public String code() {
        return "moved";
    }

    @Override
    public String word() {
        return beyond ? "beyond" : "within";
    }

    @Override
    public List<FindingValue> values() {
        return List.of(
                FindingValue.of(farthest),
                FindingValue.stated(
                        "limit", Items.limit(farthest), farthest.quantity().unit()));
    }
}
