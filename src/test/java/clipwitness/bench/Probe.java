package clipwitness.bench;

import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * What one channel of an oscilloscope sees.
 *
 * @param name        what the export calls the channel
 * @param voltage     volts at a time in s from the trigger
 * @param perDivision range, V a division
 */
public record Probe(String name, DoubleUnaryOperator voltage, double perDivision) {
    /** Divisions of the screen from its centre to its edge that a wave may fill: a little air stays. */
    private static final double USED = 3.8;

    /** Checks that all parts are there. */
    public Probe {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(voltage, "voltage");
    }

    /** A probe on a wave, in the finest range that holds another wave of the kind. */
    public static Probe on(String name, Cycle cycle, Cycle expected) {
        return new Probe(name, cycle::at, Steps.atLeast(expected.peak() / USED));
    }
}
