package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Difference;
import clipwitness.compare.judge.CommonPractice;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.measure.Harmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import java.util.List;
import java.util.Optional;

/**
 * The harmonics above the seventh of two states set equally loud, one by one and in sum: their sum over the rms is their sum over the fundamental
 * ({@code highHarmonics}) plus the fundamental over the rms (the level-matched change of order 1).
 */
final class HighHarmonics {
    private HighHarmonics() {}

    /** Their change, dB; empty where it is not known. */
    static Optional<Difference> of(StateValues values, Comparison comparison, Condition condition) {
        Optional<Measured> fundamental = comparison.levelMatched().stream()
                .filter(h -> h.order() == 1 && h.condition().equals(condition))
                .map(LevelMatchedHarmonic::change)
                .findFirst();
        return values.difference(comparison, condition, WaveformQuantity.HIGH_HARMONICS)
                .flatMap(d -> fundamental
                        .flatMap(Measured::asValue)
                        .map(f -> d.plus(f.number(), f.expandedUncertainty().orElse(0))));
    }

    /**
     * Single ones that go the other way than their sum by what is heard, with their whole uncertainty: then the sum does not decide between rounder and
     * harsher.
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
