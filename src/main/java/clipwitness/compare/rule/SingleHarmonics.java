package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.judge.CommonPractice;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.measure.Harmonic;
import clipwitness.measure.Measured;
import java.util.List;

/** Single harmonics above the seventh that go against the sum of all of these: then the sum does not decide between rounder and harsher. */
final class SingleHarmonics {
    private SingleHarmonics() {}

    /**
     * Those that go the other way by what is heard, with their whole uncertainty.
     *
     * @param rise whether the sum rises
     */
    static List<LevelMatchedHarmonic> against(Comparison comparison, Condition condition, boolean rise) {
        int sign = rise ? -1 : 1;
        return comparison.levelMatched().stream()
                .filter(h -> h.order() >= Harmonic.FIRST_HIGH && h.condition().equals(condition))
                .filter(h -> h.change()
                        .asValue()
                        .filter(v -> !v.isUpperBound() && isHeard(v, sign))
                        .isPresent())
                .toList();
    }

    private static boolean isHeard(Measured.Value change, int sign) {
        double least = sign * change.number() - change.expandedUncertainty().orElse(0);
        return least >= CommonPractice.HEARD_DECIBELS;
    }
}
