package clipwitness.compare.result;

import clipwitness.measure.Measured;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Output against input at one setting of the gain control.
 *
 * @param gainPercent      setting
 * @param steps            steps, rising
 * @param compressionPoint input level, peak V, at which the output is 1 dB short of the line through the lowest step
 */
public record LevelSeries(OptionalDouble gainPercent, List<LevelStep> steps, Measured compressionPoint) {
    /** Copies what it is given. */
    public LevelSeries {
        steps = List.copyOf(steps);
    }
}
