package clipwitness.compare.result;

import clipwitness.capture.Condition;
import java.util.List;
import java.util.Objects;

/**
 * One state over the gain control.
 *
 * @param state       state
 * @param condition   condition, gain left open (and level, where only level steps make it)
 * @param points      settings, rising
 * @param onsetGain   settings of 1 %, 3 % and 10 % distortion
 * @param levelSeries level steps, one series for each setting that has them
 */
public record Series(
        String state,
        Condition condition,
        List<SeriesPoint> points,
        List<OnsetGain> onsetGain,
        List<LevelSeries> levelSeries) {
    /** Copies what it is given. */
    public Series {
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(condition, "condition");
        points = List.copyOf(points);
        onsetGain = List.copyOf(onsetGain);
        levelSeries = List.copyOf(levelSeries);
    }
}
