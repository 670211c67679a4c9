package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Difference;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.LevelMatchedHarmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import java.util.Optional;

/**
 * The harmonics above the seventh of two states set equally loud: their sum over the rms is their sum over the fundamental
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
}
