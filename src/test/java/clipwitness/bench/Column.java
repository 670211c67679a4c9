package clipwitness.bench;

import clipwitness.capture.Samples;
import java.util.Locale;
import java.util.Objects;

/**
 * A column of an export.
 *
 * @param name     what its heading calls it
 * @param unit     unit of the values
 * @param decimals digits after the decimal mark
 * @param values   in the unit
 */
public record Column(String name, String unit, int decimals, Samples values) {
    /** Checks that all parts are there. */
    public Column {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(values, "values");
    }

    /** The same column in a unit of which so many make one of the old. */
    public Column in(String other, double factor, int places) {
        return new Column(name, other, places, values.map(v -> v * factor));
    }

    /** A value as the export writes it, with a decimal point. */
    public String text(int index) {
        return String.format(Locale.ROOT, "%." + decimals + "f", values.at(index));
    }
}
