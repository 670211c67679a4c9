package clipwitness.reading;

import clipwitness.quantity.Unit;
import java.util.Optional;

/**
 * How the written values of a channel become volts or amperes.
 *
 * @param unit     the unit they become, or empty where nobody says
 * @param factor   multiplies the written values
 * @param exponent power of ten that then multiplies them, -3 for milli
 */
record ChannelUnit(Optional<Unit> unit, double factor, int exponent) {
    /** Turns written values into the unit, in place; each is rounded once for the factor and once for the prefix. */
    void apply(double[] written) {
        if (factor == 1 && exponent == 0) {
            return;
        }
        UnitText prefix = new UnitText(unit.orElse(Unit.ONE), exponent);
        for (int i = 0; i < written.length; i++) {
            written[i] = prefix.resolve(written[i] * factor);
        }
    }
}
