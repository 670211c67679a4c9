package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.Pictured;
import clipwitness.compare.finding.Remainders;
import clipwitness.compare.finding.Subject;
import clipwitness.compare.finding.Telling;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.quantity.ItemQuantity;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the pictures of waves show. */
public final class PicturedRule {
    private PicturedRule() {}

    /** Level and distortion of each compared state under one condition. */
    public static List<Pictured> changes(JobResults results, Condition condition) {
        return results.comparisons().stream()
                .flatMap(c -> change(c, condition).stream())
                .toList();
    }

    private static Optional<Pictured> change(Comparison comparison, Condition condition) {
        List<Telling> tellings = Stream.of(ItemQuantity.LEVEL, ItemQuantity.THD)
                .flatMap(q -> Items.at(comparison, condition, q).stream())
                .map(Telling::of)
                .toList();
        return tellings.isEmpty()
                ? Optional.empty()
                : Optional.of(new Pictured(Subject.of(comparison, condition), tellings));
    }

    /** Deepest and shallowest null of each comparison over some conditions. */
    public static List<Remainders> remainders(JobResults results, List<Condition> conditions) {
        return results.comparisons().stream()
                .flatMap(c -> remainder(c, conditions).stream())
                .toList();
    }

    private static Optional<Remainders> remainder(Comparison comparison, List<Condition> conditions) {
        List<Item> items = Items.measured(comparison, ItemQuantity.NULL_DEPTH).stream()
                .filter(i -> conditions.contains(i.condition()))
                .sorted(Comparator.comparingDouble(PicturedRule::shown))
                .toList();
        if (items.isEmpty()) {
            return Optional.empty();
        }
        Item shallowest = items.get(items.size() - 1);
        return Optional.of(new Remainders(Subject.of(comparison, shallowest.condition()), items.get(0), shallowest));
    }

    /** The depth that is printed: of a bound, what it lies below. */
    private static double shown(Item item) {
        return item.change().asValue().orElseThrow().shown();
    }
}
