package clipwitness.report.words;

import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemQuantity;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.measure.Measured;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The same wave at another level. Said where a level moved beyond its limit, and where at every setting that can be compared the null is
 * deeper than its limit and no harmonic changed once both are set equally loud.
 */
final class LevelOnlyFinding implements FindingRule {
    /** A level-matched harmonic that moves by less is not heard, dB: the usual limit of the distortion. */
    private static final double SMALL_DECIBELS = 1;

    private final JobWording wording;
    private final ItemText texts;
    private final NullText nulls;

    LevelOnlyFinding(JobWording wording) {
        this.wording = wording;
        this.texts = new ItemText(wording);
        this.nulls = new NullText(wording);
    }

    @Override
    public List<String> of(Comparison comparison) {
        return level(comparison)
                .filter(i -> sameWave(comparison) && sameHarmonics(comparison))
                .map(i -> sentence(comparison, i))
                .stream()
                .toList();
    }

    /** The level that moved most, where it moved beyond its limit with its whole uncertainty. */
    private static Optional<Item> level(Comparison comparison) {
        return ItemText.measured(comparison, ItemQuantity.LEVEL).stream()
                .filter(i -> ItemText.size(i) - ItemText.uncertainty(i) > limit(i))
                .max(Comparator.comparingDouble(ItemText::size));
    }

    private static double limit(Item item) {
        return item.limit().orElse(item.quantity().limit().orElseThrow().standard());
    }

    private static boolean sameWave(Comparison comparison) {
        List<Item> depths = ItemText.measured(comparison, ItemQuantity.NULL_DEPTH);
        return !depths.isEmpty() && depths.stream().allMatch(i -> NullText.reach(i) <= limit(i));
    }

    private static boolean sameHarmonics(Comparison comparison) {
        return comparison.levelMatched().stream()
                .map(LevelMatchedHarmonic::change)
                .flatMap(m -> m.asValue().stream())
                .allMatch(LevelOnlyFinding::stays);
    }

    private static boolean stays(Measured.Value change) {
        return Math.abs(change.number())
                <= Math.max(SMALL_DECIBELS, WhatDiffers.OF_MANY * 2 * change.standardUncertainty());
    }

    private String sentence(Comparison comparison, Item level) {
        boolean louder = level.change().value().orElseThrow() > 0;
        Item worst = NullText.worst(ItemText.measured(comparison, ItemQuantity.NULL_DEPTH));
        return wording.tell(
                louder ? "finding.level.only.louder" : "finding.level.only.quieter",
                "to",
                wording.label(comparison.to()),
                "from",
                wording.label(comparison.from()),
                "condition",
                wording.spoken(level.condition()),
                "change",
                texts.sizeOf(level),
                "share",
                nulls.most(worst));
    }
}
