package clipwitness.report.words;

import clipwitness.capture.Condition;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.measure.Measured;
import clipwitness.quantity.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Single harmonics above the seventh that go against the sum of all of these: then the sum alone says nothing of rounder or harsher. */
final class SingleHarmonics {
    private static final int FIRST = 8;

    /** More than so many are counted, not listed. */
    private static final int LISTED = 4;

    private final JobWording wording;
    private final ItemText texts;

    SingleHarmonics(JobWording wording) {
        this.wording = wording;
        this.texts = new ItemText(wording);
    }

    /**
     * Those that clearly go the other way, in words; empty where none does.
     *
     * @param rise whether the sum rises
     */
    Optional<String> against(Comparison comparison, Condition condition, boolean rise) {
        int sign = rise ? -1 : 1;
        List<LevelMatchedHarmonic> found = comparison.levelMatched().stream()
                .filter(h -> h.order() >= FIRST && h.condition().equals(condition))
                .filter(h -> h.change()
                        .asValue()
                        .filter(v -> !v.isUpperBound())
                        .filter(v -> sign * v.number() - 2 * v.standardUncertainty() >= MatchedFinding.HEARD_DECIBELS)
                        .isPresent())
                .toList();
        return found.stream()
                .map(h -> h.change().asValue().orElseThrow())
                .max(Comparator.comparingDouble(v -> sign * v.number()))
                .map(most -> told(found, most));
    }

    private String told(List<LevelMatchedHarmonic> harmonics, Measured.Value most) {
        String key = "finding.matched.though." + (most.number() > 0 ? "higher" : "lower");
        List<String> orders =
                harmonics.stream().map(h -> Integer.toString(h.order())).toList();
        boolean many = orders.size() > LISTED;
        return wording.say(
                key + (many ? ".many" : orders.size() == 1 ? ".one" : ""),
                "orders",
                many ? wording.count(orders.size()) : wording.list(orders),
                "change",
                texts.round(Math.abs(most.number()), 2 * most.standardUncertainty(), Unit.DECIBEL));
    }
}
