package clipwitness.report.words;

import clipwitness.capture.Condition;
import clipwitness.capture.DoubtCode;
import clipwitness.compare.result.Comparison;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import java.util.Optional;

/** Says where a state was driven harder or softer than the one it is compared with: what changed there may be the drive, not the unit. */
final class DriveDoubt {
    /** What prints as 0.0 dB is not worth a sentence. */
    private static final double LEAST_DECIBELS = 0.05;

    private final JobWording wording;
    private final StateValues figures;

    DriveDoubt(JobWording wording, StateValues figures) {
        this.wording = wording;
        this.figures = figures;
    }

    /** The sentence; empty where the inputs were alike, or were not captured. */
    Optional<String> of(Comparison comparison, Condition condition) {
        return doubted(comparison.to(), condition) || doubted(comparison.from(), condition)
                ? input(comparison.from(), condition)
                        .flatMap(from -> input(comparison.to(), condition).map(to -> Decibels.ofAmplitude(to / from)))
                        .filter(db -> Math.abs(db) >= LEAST_DECIBELS)
                        .map(db -> sentence(db, condition))
                : Optional.empty();
    }

    private String sentence(double change, Condition condition) {
        return wording.tell(
                change > 0 ? "drive.stronger" : "drive.weaker",
                "change",
                wording.numbers().fixed(Math.abs(change), Unit.DECIBEL, 1),
                "condition",
                wording.spoken(condition));
    }

    private boolean doubted(String state, Condition condition) {
        return figures.captures(state, condition)
                .flatMap(c -> c.doubts().stream())
                .anyMatch(d -> d.code() == DoubtCode.STIMULUS_CHANGED);
    }

    private Optional<Double> input(String state, Condition condition) {
        return figures.of(state, condition, WaveformQuantity.INPUT_FUNDAMENTAL)
                .flatMap(Measured::asValue)
                .map(Measured.Value::number)
                .filter(v -> v > 0);
    }
}
