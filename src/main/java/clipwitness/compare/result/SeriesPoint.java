package clipwitness.compare.result;

import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * One setting of a series: the figures of its captures, replicates averaged.
 *
 * @param gainPercent percent of rotation
 * @param values      figures
 */
public record SeriesPoint(double gainPercent, Map<WaveformQuantity, Measured> values) {
    /** Copies what it is given. */
    public SeriesPoint {
        values = Collections.unmodifiableMap(new EnumMap<>(values));
    }
}
