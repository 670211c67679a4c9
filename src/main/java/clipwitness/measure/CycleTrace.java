package clipwitness.measure;

import clipwitness.capture.Samples;
import java.util.Objects;

/**
 * The mean cycle: all periods folded on one and averaged in evenly spaced bins, mean removed, beginning where the output's
 * fundamental goes up through zero, so that cycles of different captures lie on one another.
 *
 * @param swing  value of each bin in V, mean of the cycle removed; bin i is centred on (i + 0.5) / size of the period
 * @param mean   what was removed, V
 * @param scatter standard uncertainty of one bin, V
 */
public record CycleTrace(Samples swing, double mean, double scatter) {
    /** Checks that the trace has bins. */
    public CycleTrace {
        Objects.requireNonNull(swing, "swing");
        if (swing.size() < 8) {
            throw new IllegalArgumentException("a cycle needs 8 bins or more but has " + swing.size());
        }
    }
}
