package clipwitness.figure;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemQuantity;
import clipwitness.measure.Measured;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What the comparisons say about one condition, in words. */
final class Changes {
    private final FigureContext context;

    Changes(FigureContext context) {
        this.context = context;
    }

    /** Level and distortion of each compared state against the state it is compared with. */
    List<String> levelAndDistortion(Condition condition) {
        List<String> parts = new ArrayList<>();
        for (Comparison comparison : context.results().comparisons()) {
            List<String> changes = new ArrayList<>();
            value(comparison, condition, ItemQuantity.LEVEL)
                    .map(v -> told(v, "is %s louder", "is %s quieter", "level"))
                    .ifPresent(changes::add);
            value(comparison, condition, ItemQuantity.THD)
                    .map(v -> told(v, "distorts %s more", "distorts %s less", "distortion"))
                    .ifPresent(changes::add);
            if (!changes.isEmpty()) {
                parts.add("against %s, %s %s"
                        .formatted(
                                context.quoted(comparison.from()),
                                context.quoted(comparison.to()),
                                String.join(" and ", changes)));
            }
        }
        return parts;
    }

    /** Null depth of each comparison: its least and its greatest over some conditions. */
    List<String> nullDepths(List<Condition> conditions) {
        List<String> parts = new ArrayList<>();
        for (Comparison comparison : context.results().comparisons()) {
            List<Item> items = comparison.items().stream()
                    .filter(i -> i.quantity() == ItemQuantity.NULL_DEPTH && conditions.contains(i.condition()))
                    .filter(i -> i.change().asValue().isPresent())
                    .sorted(Comparator.comparingDouble(Changes::printed))
                    .toList();
            if (!items.isEmpty()) {
                String deepest = depth(items.get(0));
                String shallowest = depth(items.get(items.size() - 1));
                String range = items.size() == 1 ? deepest : "from " + deepest + " to " + shallowest;
                parts.add("%s less %s leaves %s"
                        .formatted(context.quoted(comparison.to()), context.quoted(comparison.from()), range));
            }
        }
        return parts;
    }

    /** The depth that is printed: of a bound, what it lies below. */
    private static double printed(Item item) {
        return item.change().asValue().orElseThrow().shown();
    }

    private String depth(Item item) {
        String value = context.values().of(item.change().asValue().orElseThrow());
        String at = context.conditions().of(item.condition(), item.condition());
        return at.isEmpty() ? value : value + " at " + at;
    }

    private static Optional<Measured.Value> value(Comparison comparison, Condition condition, ItemQuantity quantity) {
        return comparison.items().stream()
                .filter(i -> i.quantity() == quantity && i.condition().equals(condition))
                .map(Item::change)
                .flatMap(c -> c.asValue().stream())
                .findFirst();
    }

    private String told(Measured.Value change, String up, String down, String what) {
        double uncertainty = 2 * change.standardUncertainty();
        if (Math.abs(change.number()) <= uncertainty) {
            String bound = context.values().size(Measured.of(uncertainty, change.unit()));
            return "shows no change of " + what + " above its uncertainty of " + bound;
        }
        return (change.number() > 0 ? up : down).formatted(context.values().size(change));
    }
}
