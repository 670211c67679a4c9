package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Difference;
import clipwitness.compare.finding.Finding;
import clipwitness.compare.finding.Items;
import clipwitness.compare.finding.Matched;
import clipwitness.compare.finding.OtherDrive;
import clipwitness.compare.finding.Paragraph;
import clipwitness.compare.finding.Subject;
import clipwitness.compare.judge.CommonPractice;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.ItemQuantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What is left when both states are set equally loud, at the highest setting, and whether another clipped setting says otherwise.
 * Harmonics above the seventh stand for harshness: their sum over the rms is their sum over the fundamental ({@code highHarmonics})
 * plus the fundamental over the rms (the level-matched change of order 1).
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
                .flatMap(level -> highHarmonics(comparison, level.condition())
                        .map(high -> new Paragraph(findings(comparison, level, high))))
                .stream()
                .toList();
    }

    private List<Finding> findings(Comparison comparison, Item level, Difference high) {
        Condition here = level.condition();
        Optional<OtherDrive> driven = drive.of(comparison, here);
        Optional<Matched.Elsewhere> elsewhere = elsewhere(comparison, here, high);
        boolean heard = elsewhere.isEmpty() && isHeard(high);
        List<LevelMatchedHarmonic> against =
                heard ? SingleHarmonics.against(comparison, here, high.isRise()) : List.of();
        boolean told = heard && against.isEmpty() && driven.isEmpty();
        List<Finding> findings = new ArrayList<>();
        findings.add(new Matched(
                Subject.of(comparison, here),
                level,
                high,
                elsewhere,
                against,
                told ? Optional.of(timbre(high)) : Optional.empty()));
        driven.ifPresent(findings::add);
        return findings;
    }

    private static Matched.Timbre timbre(Difference high) {
        return high.isRise() ? Matched.Timbre.HARSHER : Matched.Timbre.ROUNDER;
    }

    private static boolean isHeard(Difference high) {
        return high.significant() && Math.abs(high.change()) >= CommonPractice.HEARD_DECIBELS;
    }

    /** The clipped setting that contradicts most clearly: the harmonics go the other way there, or go anywhere where here they stay. */
    private Optional<Matched.Elsewhere> elsewhere(Comparison comparison, Condition here, Difference high) {
        return Items.conditions(comparison.items()).stream()
                .distinct()
                .filter(c -> !c.equals(here) && isClipped(comparison, c))
                .flatMap(c -> highHarmonics(comparison, c).map(d -> new Matched.Elsewhere(c, d)).stream())
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

    private Optional<Difference> highHarmonics(Comparison comparison, Condition condition) {
        Optional<Difference> overFundamental =
                values.difference(comparison, condition, WaveformQuantity.HIGH_HARMONICS);
        Optional<Measured> fundamental = comparison.levelMatched().stream()
                .filter(h -> h.order() == 1 && h.condition().equals(condition))
                .map(LevelMatchedHarmonic::change)
                .findFirst();
        return overFundamental.flatMap(d -> fundamental
                .flatMap(Measured::asValue)
                .map(f -> d.plus(f.number(), f.expandedUncertainty().orElse(0))));
    }
}
