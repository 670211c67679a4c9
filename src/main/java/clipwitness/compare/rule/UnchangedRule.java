package clipwitness.compare.rule;

import clipwitness.compare.finding.Deciding;
import clipwitness.compare.finding.Difference;
import clipwitness.compare.finding.Finding;
import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.Moved;
import clipwitness.compare.finding.Paragraph;
import clipwitness.compare.finding.SameShape;
import clipwitness.compare.finding.Settings;
import clipwitness.compare.finding.Subject;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Decision;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.quantity.ItemQuantity;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What an unchanged state kept: the shape of its wave, its distortion, its asymmetry; the level is in the verdict. */
final class UnchangedRule implements FindingRule {
    private static final List<ItemQuantity> MOVED = List.of(ItemQuantity.THD, ItemQuantity.ASYMMETRY);

    private final DecidingRule deciding;

    UnchangedRule(JobResults results) {
        this.deciding = new DecidingRule(results);
    }

    @Override
    public List<Paragraph> of(Comparison comparison) {
        if (comparison.intent() != Intent.UNCHANGED) {
            return List.of();
        }
        Stream<Finding> moved = MOVED.stream().flatMap(q -> moved(comparison, q).stream());
        Optional<Item> said = deciding.of(comparison).map(Deciding::item);
        return Stream.concat(shape(comparison).stream(), moved)
                .filter(f -> said.filter(i -> isAbout(f, i)).isEmpty())
                .map(f -> new Paragraph(List.of(f)))
                .toList();
    }

    /** Whether a finding is about the change that the verdict names: then it is told already. */
    private static boolean isAbout(Finding finding, Item item) {
        return (finding instanceof Moved moved && moved.farthest().equals(item))
                || (finding instanceof SameShape shape && shape.nullDepth().equals(item));
    }

    /** The judged items, none where one of them is undecided: then nothing is known of all settings. */
    private static List<Item> known(Comparison comparison, ItemQuantity quantity) {
        List<Item> items = Items.judged(comparison, quantity);
        return items.stream().anyMatch(i -> i.decision() == Decision.UNDECIDED) ? List.of() : items;
    }

    private static List<Item> failing(List<Item> items) {
        return items.stream().filter(i -> i.decision() == Decision.FAIL).toList();
    }

    private static Optional<Finding> shape(Comparison comparison) {
        List<Item> items = known(comparison, ItemQuantity.NULL_DEPTH);
        if (items.isEmpty()) {
            return Optional.empty();
        }
        Item worst = Items.mostLeft(items);
        return Optional.of(new SameShape(
                Subject.of(comparison, worst.condition()),
                worst,
                kind(items, worst),
                Settings.of(items, items, comparison)));
    }

    private static SameShape.Kind kind(List<Item> items, Item worst) {
        if (!failing(items).isEmpty()) {
            return SameShape.Kind.BEYOND;
        }
        return Items.isBound(worst) ? SameShape.Kind.BOUND : SameShape.Kind.WITHIN;
    }

    private Optional<Finding> moved(Comparison comparison, ItemQuantity quantity) {
        List<Item> items = known(comparison, quantity);
        if (items.isEmpty()) {
            return Optional.empty();
        }
        List<Item> failing = failing(items);
        List<Item> told = failing.isEmpty() ? items : failing;
        Item farthest = Items.farthest(told);
        return Optional.of(new Moved(
                Subject.of(comparison, farthest.condition()),
                farthest,
                !failing.isEmpty(),
                Settings.of(told, items, comparison),
                deciding.figures(comparison, farthest).filter(d -> !failing.isEmpty() || isUneven(quantity, d)),
                isPart(comparison, quantity),
                !failing(Items.judged(comparison, ItemQuantity.NULL_DEPTH)).isEmpty()));
    }

    /** Whether the halves of the wave are unequal in both states by more than an unchanged state may move: then it is said that they were so before. */
    private static boolean isUneven(ItemQuantity quantity, Difference figures) {
        return quantity == ItemQuantity.ASYMMETRY
                && Math.abs(figures.now().number()) > AsymmetricRule.ALIKE_PERCENT
                && Math.abs(figures.before().number()) > AsymmetricRule.ALIKE_PERCENT;
    }

    /** Whether distortion was left unjudged at some setting because there is next to none in both states. */
    private static boolean isPart(Comparison comparison, ItemQuantity quantity) {
        return quantity == ItemQuantity.THD
                && Items.measured(comparison, quantity).stream().anyMatch(i -> !i.judged());
    }
}
