package clipwitness.compare.rule;

import clipwitness.capture.Condition;
import clipwitness.compare.finding.Difference;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.JobResults;
import clipwitness.compare.result.Series;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import java.util.Optional;
import java.util.stream.Stream;

/** Figures of a state under a condition: from its series, replicates averaged, else from its first capture. */
public final class StateValues {
    private final JobResults results;

    /** The figures of a job. */
    public StateValues(JobResults results) {
        this.results = results;
    }

    /** A figure, where it was measured. */
    public Optional<Measured> of(String state, Condition condition, WaveformQuantity quantity) {
        Optional<Measured> averaged = results.series().stream()
                .filter(s -> s.state().equals(state) && s.condition().equals(condition.withoutGain()))
                .flatMap(s -> point(s, condition, quantity).stream())
                .findFirst();
        return averaged.isPresent() ? averaged : ofCapture(state, condition, quantity);
    }

    private static Optional<Measured> point(Series series, Condition condition, WaveformQuantity quantity) {
        return series.points().stream()
                .filter(p -> condition.gainPercent().isPresent()
                        && condition.gainPercent().getAsDouble() == p.gainPercent())
                .flatMap(p -> Optional.ofNullable(p.values().get(quantity)).stream())
                .findFirst();
    }

    private Optional<Measured> ofCapture(String state, Condition condition, WaveformQuantity quantity) {
        return capture(state, condition)
                .flatMap(CaptureResult::waveform)
                .flatMap(w -> Optional.ofNullable(w.values().get(quantity)));
    }

    /** The first measured capture of a state under a condition. */
    public Optional<CaptureResult> capture(String state, Condition condition) {
        return captures(state, condition).findFirst();
    }

    /** The measured captures of a state under a condition. */
    Stream<CaptureResult> captures(String state, Condition condition) {
        return results.waves(state, condition);
    }

    /** How a figure differs between the two states of a comparison. */
    Optional<Difference> difference(Comparison comparison, Condition condition, WaveformQuantity quantity) {
        Optional<Measured.Value> before =
                of(comparison.from(), condition, quantity).flatMap(Measured::asValue);
        Optional<Measured.Value> now = of(comparison.to(), condition, quantity).flatMap(Measured::asValue);
        return before.flatMap(b -> now.map(n -> Difference.of(b, n)));
    }
}
