package clipwitness.report.words;

import clipwitness.measure.Measured;
import java.util.OptionalDouble;

/**
 * A measured figure as text.
 *
 * @param number      the value, or {@code < value} where noise bounds it; empty where there is none
 * @param uncertainty expanded uncertainty to the same place; empty where there is none or where the number is a bound
 * @param unit        unit with its prefix, empty for a pure number
 * @param reason      why there is no number
 */
public record Amount(String number, String uncertainty, String unit, String reason) {
    /** The figure in a scale of its own. */
    static Amount of(Measured measured, Numerals numerals) {
        return of(measured, Scale.of(measured.unit(), magnitude(measured)), numerals, false);
    }

    /** The figure as a change: with its sign. */
    static Amount ofChange(Measured measured, Numerals numerals) {
        return of(measured, Scale.of(measured.unit(), magnitude(measured)), numerals, true);
    }

    /** The figure in a given scale. */
    static Amount of(Measured measured, Scale scale, Numerals numerals, boolean signed) {
        if (measured.value().isEmpty()) {
            return new Amount("", "", scale.symbol(), measured.reason().orElse(""));
        }
        double value = measured.value().getAsDouble() / scale.factor();
        double uncertainty = measured.expandedUncertainty().orElse(0) / scale.factor();
        int decimals = Numerals.decimals(uncertainty, value);
        if (measured.asValue().map(Measured.Value::isUpperBound).orElse(false)) {
            return new Amount("< " + numerals.fixed(value + uncertainty, decimals), "", scale.symbol(), "");
        }
        return new Amount(
                signed ? numerals.signed(value, decimals) : numerals.fixed(value, decimals),
                uncertainty > 0 ? numerals.fixed(uncertainty, decimals) : "",
                scale.symbol(),
                "");
    }

    /** Size of a figure, for the choice of a prefix; 0 where there is none. */
    static double magnitude(Measured measured) {
        OptionalDouble value = measured.value();
        return value.isPresent()
                ? Math.max(
                        Math.abs(value.getAsDouble()),
                        measured.expandedUncertainty().orElse(0))
                : 0;
    }

    /** Number and unit. */
    public String text() {
        return join(number);
    }

    /** Number, uncertainty and unit: {@code 1.32 ± 0.10 dB}. */
    public String full() {
        return join(uncertainty.isEmpty() ? number : number + " ± " + uncertainty);
    }

    private String join(String what) {
        return unit.isEmpty() ? what : what + Numerals.NO_BREAK + unit;
    }

    /** The same figure in another unit's name. */
    Amount named(String otherUnit) {
        return new Amount(number, uncertainty, otherUnit, reason);
    }
}
