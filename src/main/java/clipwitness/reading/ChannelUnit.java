package clipwitness.reading;

import clipwitness.quantity.Unit;
import clipwitness.reading.number.WrittenUnit;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * How the written values of a channel become volts or amperes.
 *
 * @param unit    the unit they become, or empty where it is not stated
 * @param resolve makes a value in the unit of a written one
 */
record ChannelUnit(Optional<Unit> unit, DoubleUnaryOperator resolve) {
    /** Values that stand as they are written. */
    static ChannelUnit asWritten() {
        return new ChannelUnit(Optional.empty(), DoubleUnaryOperator.identity());
    }

    /** Values in a unit with a prefix, to be multiplied by a factor first. */
    static ChannelUnit of(WrittenUnit unit, double factor) {
        return new ChannelUnit(Optional.of(unit.unit()), v -> unit.resolve(v * factor));
    }

    /** Turns written values into the unit, in place. */
    void apply(double[] written) {
        for (int i = 0; i < written.length; i++) {
            written[i] = resolve.applyAsDouble(written[i]);
        }
    }
}
