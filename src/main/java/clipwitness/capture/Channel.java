package clipwitness.capture;

import clipwitness.quantity.Unit;
import java.util.Objects;
import java.util.Optional;

/**
 * One column of an export.
 *
 * @param name     the channel's name in the export, or {@code column N} where it has none
 * @param column   1-based number of the column among the file's channels
 * @param unit     volts or amperes, or empty where the file does not say
 * @param samples  values in the unit, prefixes resolved
 * @param vertical vertical scale, where the preamble gives one
 */
public record Channel(String name, int column, Optional<Unit> unit, Samples samples, Optional<VerticalScale> vertical) {
    /** Checks that all parts are there. */
    public Channel {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(samples, "samples");
        Objects.requireNonNull(vertical, "vertical");
        if (column < 1) {
            throw new IllegalArgumentException("column must be 1 or more but is " + column);
        }
    }
}
