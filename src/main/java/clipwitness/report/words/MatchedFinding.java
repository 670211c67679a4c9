package clipwitness.report.words;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Intent;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.ItemQuantity;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What is left when both states are set equally loud, at the highest setting, and whether another clipped setting says otherwise.
 * Harmonics above the seventh stand for harshness: their sum over the rms is their sum over the fundamental ({@code highHarmonics})
 * plus the fundamental over the rms (the level-matched change of order 1).
 */
final class MatchedFinding implements FindingRule {
    /** Settings speak of the clipping where both states distort more than this, percent. */
    private static final double CLIPPED_PERCENT = 3;

    /** Harmonics that move by less do not make a wave rounder or harsher to a listener, dB (common practice). */
    static final double HEARD_DECIBELS = 1;

    private final JobWording wording;
    private final ItemText texts;
    private final StateValues figures;
    private final DriveDoubt drive;
    private final SingleHarmonics singles;

    MatchedFinding(JobWording wording, StateValues figures) {
        this.wording = wording;
        this.texts = new ItemText(wording);
        this.figures = figures;
        this.drive = new DriveDoubt(wording, figures);
        this.singles = new SingleHarmonics(wording);
    }

    @Override
    public List<String> of(Comparison comparison) {
        if (comparison.intent() != Intent.CHANGED) {
            return List.of();
        }
        return WhatDiffers.highest(comparison, ItemQuantity.LEVEL)
                .flatMap(level -> highHarmonics(comparison, level.condition())
                        .map(d -> sentence(comparison, level, new Place(level.condition(), d))))
                .stream()
                .toList();
    }

    private record Place(Condition condition, Difference high) {}

    private String sentence(Comparison comparison, Item level, Place here) {
        Optional<String> driven = drive.of(comparison, here.condition());
        List<String> parts = new ArrayList<>();
        parts.add(wording.say(
                "finding.matched." + kind(here.high()),
                "lead",
                lead(comparison, level),
                "change",
                here.high().significant() ? texts.size(here.high(), Unit.DECIBEL) : "",
                "uncertainty",
                texts.round(
                        Math.abs(here.high().change()) + here.high().uncertainty(),
                        here.high().uncertainty(),
                        Unit.DECIBEL)));
        Optional<Place> other = otherwise(comparison, here);
        if (other.isPresent()) {
            parts.add(elsewhere(other.get()));
        } else if (isHeard(here.high())) {
            singles.against(comparison, here.condition(), here.high().isRise())
                    .or(() -> driven.isPresent() ? Optional.empty() : Optional.of(character(here)))
                    .ifPresent(parts::add);
        }
        String said = wording.say("finding.matched.end", "sentence", String.join(", ", parts));
        return driven.map(d -> said + " " + d).orElse(said);
    }

    private String character(Place here) {
        return wording.tell(
                here.high().isRise() ? "finding.matched.harsher" : "finding.matched.rounder",
                "condition",
                wording.spoken(here.condition()));
    }

    private static boolean isHeard(Difference high) {
        return high.significant() && Math.abs(high.change()) >= HEARD_DECIBELS;
    }

    private static String kind(Difference high) {
        if (high.significant()) {
            return high.isRise() ? "higher" : "lower";
        }
        return high.bounded() ? "buried" : "alike";
    }

    private String elsewhere(Place other) {
        return wording.say(
                other.high().isRise() ? "finding.matched.but.higher" : "finding.matched.but.lower",
                "change",
                texts.size(other.high(), Unit.DECIBEL),
                "condition",
                wording.spoken(other.condition()));
    }

    /** The clipped setting that contradicts most clearly: the harmonics go the other way there, or go anywhere where here they stay. */
    private Optional<Place> otherwise(Comparison comparison, Place here) {
        return comparison.items().stream()
                .map(Item::condition)
                .distinct()
                .filter(c -> !c.equals(here.condition()) && clipped(comparison, c))
                .flatMap(c -> highHarmonics(comparison, c).map(d -> new Place(c, d)).stream())
                .filter(p -> isHeard(p.high()))
                .filter(p -> !here.high().significant()
                        || p.high().isRise() != here.high().isRise())
                .max(Comparator.comparingDouble(p -> Math.abs(p.high().change())));
    }

    private boolean clipped(Comparison comparison, Condition condition) {
        return figures.difference(comparison, condition, WaveformQuantity.THD)
                .filter(d -> d.before().number() > CLIPPED_PERCENT && d.now().number() > CLIPPED_PERCENT)
                .isPresent();
    }

    private String lead(Comparison comparison, Item level) {
        String condition = wording.spoken(level.condition());
        if (!WhatDiffers.significant(level)) {
            return wording.tell("finding.matched.equal", "condition", condition);
        }
        return wording.tell(
                level.change().value().orElseThrow() < 0 ? "finding.matched.quieter" : "finding.matched.louder",
                "level",
                texts.sizeOf(level),
                "to",
                wording.label(comparison.to()),
                "condition",
                condition);
    }

    private Optional<Difference> highHarmonics(Comparison comparison, Condition condition) {
        Optional<Difference> overFundamental =
                figures.difference(comparison, condition, WaveformQuantity.HIGH_HARMONICS);
        Optional<Measured> fundamental = comparison.levelMatched().stream()
                .filter(h -> h.order() == 1 && h.condition().equals(condition))
                .map(LevelMatchedHarmonic::change)
                .findFirst();
        return overFundamental.flatMap(d -> fundamental
                .flatMap(Measured::asValue)
                .map(f -> d.plus(f.number(), f.expandedUncertainty().orElse(0))));
    }
}
