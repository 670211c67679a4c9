package clipwitness.compare.judge;

import clipwitness.job.Bench;
import clipwitness.job.CaptureRow;
import clipwitness.measure.junction.Temperature;
import java.util.OptionalDouble;

/**
 * Temperature at which a capture was taken: its own where the table states it, else the bench's, else 23 °C known to 3 K. One that
 * somebody read is known to 1 K. Both are bounds, u = a / sqrt 3.
 */
public final class CaptureTemperature {
    private static final double READ_TO = 1;

    private CaptureTemperature() {}

    /** Temperature of a row's capture at a bench. */
    public static Temperature of(CaptureRow row, Bench bench) {
        return of(stated(row, bench.temperature()));
    }

    /**
     * Temperature as it was read.
     *
     * @param celsius °C, empty where nobody read it
     */
    public static Temperature of(OptionalDouble celsius) {
        return celsius.isPresent()
                ? new Temperature(celsius.getAsDouble(), READ_TO / Math.sqrt(3))
                : new Temperature(Bench.DEFAULT_TEMPERATURE, Bench.DEFAULT_TEMPERATURE_BOUND / Math.sqrt(3));
    }

    /** What was read, °C: the row's own, else the bench's. */
    static OptionalDouble stated(CaptureRow row, OptionalDouble bench) {
        return row.temperature().isPresent() ? row.temperature() : bench;
    }

    /** How far apart two temperatures may lie, K, standard: two readings of one thermometer go wrong together, so the larger counts. */
    public static double apart(Temperature a, Temperature b) {
        return Math.hypot(a.celsius() - b.celsius(), Math.max(a.standardUncertainty(), b.standardUncertainty()));
    }
}
