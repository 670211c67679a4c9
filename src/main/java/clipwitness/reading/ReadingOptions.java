package clipwitness.reading;

import clipwitness.quantity.ColumnUnits;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the user says about an export because the export does not say it; each part wins over the file.
 *
 * @param interval time from sample to sample in s, above 0
 * @param unit     unit of the values: one for all channels, or one for each column
 * @param scale    volts or amperes for each count of the file's values, not 0; with a unit for all channels and without prefix only
 */
public record ReadingOptions(OptionalDouble interval, Optional<ColumnUnits> unit, OptionalDouble scale) {
    private static final ReadingOptions NONE =
            new ReadingOptions(OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty());

    /** Checks the ranges. */
    public ReadingOptions {
        Objects.requireNonNull(interval, "interval");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(scale, "scale");
        interval.ifPresent(
                i -> require(i > 0 && i < Double.POSITIVE_INFINITY, "interval must be above 0 s but is " + i));
        scale.ifPresent(s -> require(Double.isFinite(s) && s != 0, "scale must be finite and not 0 but is " + s));
        boolean scaled = scale.isPresent() && !unit.map(ColumnUnits::takesScale).orElse(true);
        require(!scaled, "a scale goes with one unit without prefix");
    }

    /** Nothing said: the file alone decides. */
    public static ReadingOptions none() {
        return NONE;
    }

    private static void require(boolean holds, String message) {
        if (!holds) {
            throw new IllegalArgumentException(message);
        }
    }
}
