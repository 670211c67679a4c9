package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.FindingValue;
import clipwitness.compare.finding.OtherDrive;
import clipwitness.compare.finding.Subject;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.JobResults;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.DoubtCode;
import java.util.Optional;

/** Where a doubt about the stimulus was raised: how the inputs of two states differ. */
public final class OtherDriveRule {
    /** What prints as 0.0 dB is not worth a sentence. */
    private static final double LEAST_DECIBELS = 0.05;

    private final JobResults results;
    private final StateValues values;

    /** The rule for a job. */
    public OtherDriveRule(JobResults results) {
        this.results = results;
        this.values = new StateValues(results);
    }

    /** The finding; empty where the inputs were alike, or were not captured. */
    public Optional<OtherDrive> of(Comparison comparison, Condition condition) {
        if (!isDoubted(comparison.to(), condition) && !isDoubted(comparison.from(), condition)) {
            return Optional.empty();
        }
        return input(comparison.from(), condition)
                .flatMap(from -> input(comparison.to(), condition).map(to -> change(from, to)))
                .filter(change -> Math.abs(change.value()) >= LEAST_DECIBELS)
                .map(change -> new OtherDrive(Subject.of(comparison, condition), change));
    }

    private static FindingValue change(Measured.Value from, Measured.Value to) {
        double relative = Math.hypot(from.relativeUncertainty(), to.relativeUncertainty());
        return FindingValue.known(
                "inputFundamental",
                Decibels.ofAmplitude(to.number() / from.number()),
                Unit.DECIBEL,
                Measured.COVERAGE_FACTOR * Decibels.PER_RELATIVE_AMPLITUDE * relative);
    }

    private boolean isDoubted(String state, Condition condition) {
        return results.waves(state, condition)
                .flatMap(c -> c.doubts().stream())
                .anyMatch(d -> d.code() == DoubtCode.STIMULUS_CHANGED);
    }

    private Optional<Measured.Value> input(String state, Condition condition) {
        return values.of(state, condition, WaveformQuantity.INPUT_FUNDAMENTAL)
                .flatMap(Measured::asValue)
                .filter(v -> v.number() > 0);
    }
}
