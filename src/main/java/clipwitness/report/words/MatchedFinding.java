package clipwitness.report.words;

import clipwitness.capture.Condition;
import clipwitness.compare.Comparison;
import clipwitness.compare.Intent;
import clipwitness.compare.Item;
import clipwitness.compare.ItemQuantity;
import clipwitness.compare.LevelMatchedHarmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.Optional;

/**
 * What is left when both states are set equally loud, at the highest setting. Harmonics above the seventh stand for harshness:
 * their sum over the rms is their sum over the fundamental ({@code highHarmonics}) plus the fundamental over the rms (the
 * level-matched change of order 1).
 */
final class MatchedFinding implements FindingRule {
    private final Wording wording;
    private final ItemText texts;
    private final Figures figures;

    MatchedFinding(Wording wording, Figures figures) {
        this.wording = wording;
        this.texts = new ItemText(wording);
        this.figures = figures;
    }

    @Override
    public List<String> of(Comparison comparison) {
        if (comparison.intent() != Intent.CHANGED) {
            return List.of();
        }
        return VerdictText.highest(comparison, ItemQuantity.LEVEL)
                .flatMap(level -> highHarmonics(comparison, level.condition()).map(c -> sentence(comparison, level, c)))
                .stream()
                .toList();
    }

    private String sentence(Comparison comparison, Item level, Difference high) {
        String lead = lead(comparison, level);
        if (!high.significant()) {
            return wording.say(
                    "finding.matched.alike",
                    "lead",
                    lead,
                    "uncertainty",
                    texts.round(Math.abs(high.change()) + high.uncertainty(), high.uncertainty(), Unit.DECIBEL));
        }
        return wording.say(
                high.change() < 0 ? "finding.matched.rounder" : "finding.matched.harsher",
                "lead",
                lead,
                "change",
                texts.round(Math.abs(high.change()), high.uncertainty(), Unit.DECIBEL));
    }

    private String lead(Comparison comparison, Item level) {
        double change = level.change().value().orElseThrow();
        String condition = wording.spoken(level.condition());
        if (Math.abs(change) <= level.change().expandedUncertainty().orElse(0)) {
            return wording.say("finding.matched.equal", "condition", condition);
        }
        return wording.say(
                change < 0 ? "finding.matched.quieter" : "finding.matched.louder",
                "level",
                texts.size(level),
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
