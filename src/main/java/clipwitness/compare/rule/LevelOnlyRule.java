package clipwitness.compare.rule;

import clipwitness.compare.finding.Finding;
import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.LevelOnly;
import clipwitness.compare.finding.Paragraph;
import clipwitness.compare.finding.Significance;
import clipwitness.compare.finding.Subject;
import clipwitness.compare.judge.CommonPractice;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.measure.Measured;
import clipwitness.quantity.ItemQuantity;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The same wave at another level. Said where a level moved beyond its limit, and where at every setting that can be compared the null is
 * deeper than its limit and no harmonic changed once both are set equally loud.
 */
final class LevelOnlyRule implements FindingRule {
    @Override
    public List<Paragraph> of(Comparison comparison) {
        return level(comparison)
                .filter(i -> sameWave(comparison) && sameHarmonics(comparison))
                .map(i -> new Paragraph(List.of(finding(comparison, i))))
                .stream()
                .toList();
    }

    private static Finding finding(Comparison comparison, Item level) {
        return new LevelOnly(
                Subject.of(comparison, level.condition()),
                level,
                Items.mostLeft(Items.measured(comparison, ItemQuantity.NULL_DEPTH)));
    }

    /** The level that moved most, where it moved beyond its limit with its whole uncertainty. */
    private static Optional<Item> level(Comparison comparison) {
        return Items.measured(comparison, ItemQuantity.LEVEL).stream()
                .filter(i -> Items.size(i) - Items.uncertainty(i) > Items.limit(i))
                .max(Comparator.comparingDouble(Items::size));
    }

    private static boolean sameWave(Comparison comparison) {
        List<Item> depths = Items.measured(comparison, ItemQuantity.NULL_DEPTH);
        return !depths.isEmpty() && depths.stream().allMatch(i -> Items.reach(i) <= Items.limit(i));
    }

    private static boolean sameHarmonics(Comparison comparison) {
        return comparison.levelMatched().stream()
                .map(LevelMatchedHarmonic::change)
                .flatMap(m -> m.asValue().stream())
                .allMatch(LevelOnlyRule::stays);
    }

    private static boolean stays(Measured.Value change) {
        return Math.abs(change.number()) <= CommonPractice.HEARD_DECIBELS
                || !Significance.exceedsAsOneOfMany(
                        change.number(), change.expandedUncertainty().orElse(0));
    }
}
