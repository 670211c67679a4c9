package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Differs;
import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.Significance;
import clipwitness.compare.finding.Subject;
import clipwitness.compare.finding.Telling;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Item;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What differs between two states: loudness and distortion at the highest setting, or where the highest shows nothing at the
 * setting that differs most; where neither differs anywhere, the asymmetry, the crest or the shape.
 */
public final class DiffersRule {
    private static final List<ItemQuantity> FIRST = List.of(ItemQuantity.LEVEL, ItemQuantity.THD);
    private static final List<ItemQuantity> FURTHER = List.of(ItemQuantity.ASYMMETRY, ItemQuantity.CREST_FACTOR);

    private final Comparison comparison;
    private final List<Telling> first;
    private final Optional<Telling> further;

    private DiffersRule(Comparison comparison) {
        this.comparison = comparison;
        this.first = FIRST.stream().flatMap(q -> telling(q).stream()).toList();
        this.further = FURTHER.stream()
                .flatMap(q -> clearest(q).stream())
                .findFirst()
                .map(Telling::of)
                .or(this::shape);
    }

    /** Whether anything differs beyond its uncertainty. */
    public static boolean any(Comparison comparison) {
        DiffersRule rule = new DiffersRule(comparison);
        return rule.first.stream().anyMatch(Telling::isChange) || rule.further.isPresent();
    }

    /** What differs, a finding a condition. */
    public static List<Differs> of(Comparison comparison) {
        return new DiffersRule(comparison).findings();
    }

    private List<Differs> findings() {
        Map<Condition, List<Telling>> parts = new LinkedHashMap<>();
        first.forEach(t -> add(parts, t));
        if (first.stream().noneMatch(Telling::isChange)) {
            further.ifPresent(t -> add(parts, t));
        }
        return parts.entrySet().stream()
                .map(e -> new Differs(Subject.of(comparison, e.getKey()), e.getValue()))
                .toList();
    }

    private static void add(Map<Condition, List<Telling>> parts, Telling telling) {
        parts.computeIfAbsent(telling.item().condition(), k -> new ArrayList<>())
                .add(telling);
    }

    private Optional<Telling> telling(ItemQuantity quantity) {
        Optional<Item> highest = Items.highest(comparison, quantity);
        return highest.filter(Significance::of)
                .or(() -> clearest(quantity))
                .or(() -> highest)
                .map(Telling::of);
    }

    private Optional<Item> clearest(ItemQuantity quantity) {
        return Items.measured(comparison, quantity).stream()
                .filter(Significance::ofOneOfMany)
                .max(Comparator.comparingDouble(Items::size));
    }

    /** Another shape: what is left lies beyond the usual limit with its whole uncertainty. */
    private Optional<Telling> shape() {
        return Items.worst(Items.measured(comparison, ItemQuantity.NULL_DEPTH))
                .filter(DiffersRule::isOtherShape)
                .map(i -> new Telling(i, Telling.Kind.MORE));
    }

    private static boolean isOtherShape(Item item) {
        double limit = item.quantity().limit().orElseThrow().standard();
        return item.change()
                .asValue()
                .filter(v -> !v.isUpperBound())
                .map(Measured.Value::number)
                .filter(v -> v - Items.uncertainty(item) > limit)
                .isPresent();
    }
}
