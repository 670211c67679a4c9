package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Items;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Item;
import java.util.Optional;

/** The condition that the verdict of a comparison names: of the item that decides it, else of what differs. */
public final class SpokenCondition {
    private SpokenCondition() {}

    /** The condition; empty where the verdict names none. */
    public static Optional<Condition> of(Comparison comparison) {
        Decision verdict = comparison.verdict();
        return verdict == Decision.FAIL || verdict == Decision.UNDECIDED
                ? Items.worst(Items.decided(comparison, verdict)).map(Item::condition)
                : DiffersRule.of(comparison).stream()
                        .findFirst()
                        .map(d -> d.subject().condition());
    }
}
