package clipwitness.report.words;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemQuantity;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.Optional;

/**
 * Whether the two halves of the wave are clipped alike, at the highest setting: from the clip levels where an input was captured
 * (the mean of an asymmetric wave moves with the drive and hides what they show), else from the peaks.
 */
final class AsymmetryFinding implements FindingRule {
    /** Both halves count as alike below this, percent: the usual limit for an unchanged state. */
    private static final double ALIKE_PERCENT = 2;

    private final JobWording wording;
    private final ItemText texts;
    private final StateValues figures;

    AsymmetryFinding(JobWording wording, StateValues figures) {
        this.wording = wording;
        this.texts = new ItemText(wording);
        this.figures = figures;
    }

    @Override
    public List<String> of(Comparison comparison) {
        if (comparison.intent() != Intent.CHANGED) {
            return List.of();
        }
        return WhatDiffers.highest(comparison, ItemQuantity.ASYMMETRY)
                .map(Item::condition)
                .flatMap(c -> sentence(comparison, c))
                .stream()
                .toList();
    }

    private Optional<String> sentence(Comparison comparison, Condition condition) {
        Optional<Difference> clip = figures.difference(comparison, condition, WaveformQuantity.CLIP_ASYMMETRY);
        Optional<Difference> halves =
                clip.isPresent() ? clip : figures.difference(comparison, condition, WaveformQuantity.ASYMMETRY);
        String which = wording.say(clip.isPresent() ? "which.clip" : "which.peaks");
        return halves.filter(AsymmetryFinding::says)
                .map(d -> withEvens(comparison, condition, sentence(comparison, condition, d, which)));
    }

    /** A difference that is there, or halves that are alike in both states; what lies between says nothing. */
    private static boolean says(Difference d) {
        return alike(d) || (d.significant() && Math.abs(d.change()) > ALIKE_PERCENT);
    }

    private static boolean alike(Difference d) {
        return reach(d.before().number(), d.before().expandedUncertainty().orElse(0)) <= ALIKE_PERCENT
                && reach(d.now().number(), d.now().expandedUncertainty().orElse(0)) <= ALIKE_PERCENT;
    }

    private static double reach(double value, double uncertainty) {
        return Math.abs(value) + uncertainty;
    }

    private String sentence(Comparison comparison, Condition condition, Difference d, String which) {
        boolean even = Math.abs(d.now().number()) <= ALIKE_PERCENT;
        return wording.tell(
                even ? "finding.symmetry" : "finding.asymmetry",
                "to",
                wording.label(comparison.to()),
                "condition",
                wording.spoken(condition),
                "which",
                which,
                "now",
                texts.round(d.now().number(), d.now().expandedUncertainty().orElse(0), Unit.PERCENT),
                "before",
                texts.round(
                        d.before().number(), d.before().expandedUncertainty().orElse(0), Unit.PERCENT));
    }

    private String withEvens(Comparison comparison, Condition condition, String lead) {
        Optional<Difference> evens = figures.difference(comparison, condition, WaveformQuantity.EVEN_HARMONICS)
                .filter(Difference::significant);
        return evens.map(d -> wording.say(
                        d.isRise() ? "finding.even.more" : "finding.even.less",
                        "lead",
                        lead,
                        "change",
                        texts.size(d, Unit.DECIBEL)))
                .orElse(lead);
    }
}
