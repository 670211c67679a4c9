package clipwitness.compare.result;

import java.util.List;

/**
 * Whether the captures before the work are good enough.
 *
 * @param items   what they can tell, quantity by quantity
 * @param missing what to do at the bench, most important first
 */
public record ReadyResult(List<ReadyItem> items, List<Missing> missing) {
    /** Copies what it is given. */
    public ReadyResult {
        items = List.copyOf(items);
        missing = List.copyOf(missing);
    }

    /** Whether every limit could be kept by a unit that did not change, and nothing grave is missing. */
    public boolean sufficient() {
        return !items.isEmpty()
                && items.stream().allMatch(ReadyItem::sufficient)
                && missing.stream().noneMatch(Missing::grave);
    }
}
