package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Difference;
import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.Matched;
import clipwitness.compare.finding.Paragraph;
import clipwitness.compare.finding.Subject;
import clipwitness.compare.judge.CommonPractice;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.ItemQuantity;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The harmonics above the seventh when both states are set equally loud, at the highest setting, and whether another clipped setting
 * says otherwise. Nothing is said where the drive differed, which moves them by itself.
 */
final class MatchedRule implements FindingRule {
    private final StateValues values;
    private final OtherDriveRule drive;

    MatchedRule(JobResults results) {
        this.values = new StateValues(results);
        this.drive = new OtherDriveRule(results);
    }

    @Override
    public List<Paragraph> of(Comparison comparison) {
        if (comparison.intent() != Intent.CHANGED) {
            return List.of();
        }
        return Items.highest(comparison, ItemQuantity.LEVEL)
                .map(Item::condition)
                .filter(here -> drive.of(comparison, here).isEmpty())
                .flatMap(here -> HighHarmonics.of(values, comparison, here)
                        .map(high -> new Paragraph(List.of(matched(comparison, here, high)))))
                .stream()
                .toList();
    }

    private Matched matched(Comparison comparison, Condition here, Difference high) {
        Optional<Matched.Elsewhere> elsewhere = elsewhere(comparison, here, high);
        List<LevelMatchedHarmonic> against = elsewhere.isEmpty() && isHeard(high)
                ? HighHarmonics.against(comparison, here, high.isRise())
                : List.of();
        return new Matched(Subject.of(comparison, here), high, elsewhere, against);
    }

    private static boolean isHeard(Difference high) {
        return high.significant() && Math.abs(high.change()) >= CommonPractice.HEARD_DECIBELS;
    }

    /** The clipped setting that contradicts most clearly: the harmonics go the other way there, or go anywhere where here they stay. */
    private Optional<Matched.Elsewhere> elsewhere(Comparison comparison, Condition here, Difference high) {
        return Items.conditionsOfWaves(comparison).stream()
                .distinct()
                .filter(c -> !c.equals(here) && isClipped(comparison, c))
                .filter(c -> drive.of(comparison, c).isEmpty())
                .flatMap(c -> HighHarmonics.of(values, comparison, c).map(d -> new Matched.Elsewhere(c, d)).stream())
                .filter(e -> isHeard(e.high()))
                .filter(e -> !high.significant() || e.high().isRise() != high.isRise())
                .max(Comparator.comparingDouble(e -> Math.abs(e.high().change())));
    }

    /** Settings count where both states clearly clip. */
    private boolean isClipped(Comparison comparison, Condition condition) {
        return values.difference(comparison, condition, WaveformQuantity.THD)
                .filter(d -> d.before().number() > CommonPractice.CLEARLY_CLIPPED_PERCENT
                        && d.now().number() > CommonPractice.CLEARLY_CLIPPED_PERCENT)
                .isPresent();
    }
}
