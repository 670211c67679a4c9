package clipwitness.compare.result;

import clipwitness.quantity.ItemQuantity;
import clipwitness.reason.Reason;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Two states side by side.
 *
 * @param from           state compared with
 * @param to             state that is compared
 * @param intent         what the comparison is to show
 * @param verdict        verdict
 * @param reason         why a verdict without failing item is not a pass
 * @param judged         quantities that were judged
 * @param notExamined    quantities that could not be looked at
 * @param items          items, condition by condition
 * @param levelMatched   harmonics at equal loudness
 * @param equivalentGain settings of equal distortion
 */
public record Comparison(
        String from,
        String to,
        Intent intent,
        Decision verdict,
        Optional<Reason> reason,
        List<ItemQuantity> judged,
        List<NotExamined> notExamined,
        List<Item> items,
        List<LevelMatchedHarmonic> levelMatched,
        List<EquivalentGain> equivalentGain) {
    /** Copies what it is given. */
    public Comparison {
        Objects.requireNonNull(verdict, "verdict");
        judged = List.copyOf(judged);
        notExamined = List.copyOf(notExamined);
        items = List.copyOf(items);
        levelMatched = List.copyOf(levelMatched);
        equivalentGain = List.copyOf(equivalentGain);
    }
}
