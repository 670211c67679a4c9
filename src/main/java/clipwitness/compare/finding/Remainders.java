package clipwitness.compare.finding;

import clipwitness.compare.result.Item;
import java.util.List;

/**
 * What is left of one wave less the other when both are set equally loud.
 *
 * @param subject    states, and the condition of the shallowest null
 * @param deepest    the deepest null
 * @param shallowest the shallowest; the same where there is one setting alone
 */
public record Remainders(Subject subject, Item deepest, Item shallowest) implements Finding {
    @Override
    public String code() {
        return "remainder";
    }

    @Override
    public String word() {
        return deepest.equals(shallowest) ? "one" : "range";
    }

    @Override
    public List<FindingValue> values() {
        return List.of(
                FindingValue.of("deepest", deepest.change().asValue().orElseThrow()),
                FindingValue.of("shallowest", shallowest.change().asValue().orElseThrow()));
    }
}
