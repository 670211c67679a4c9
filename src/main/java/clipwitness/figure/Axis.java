package clipwitness.figure;

import clipwitness.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * An axis: its scale and its marks.
 *
 * @param label quantity and unit, {@code Output, mV}
 * @param scale scale, in the unit without prefix
 * @param ticks marks, rising
 */
record Axis(String label, Scale scale, List<Tick> ticks) {
    private static final double LEAST_RATIO = 2.2;
    private static final double NEAR = 1.4;

    /** Copies what it is given. */
    Axis {
        ticks = List.copyOf(ticks);
    }

    /**
     * One mark.
     *
     * @param value where, in the unit without prefix
     * @param text  its number
     */
    record Tick(double value, String text) {}

    /** An axis whose ends are round numbers and that holds a range; about so many steps. */
    static Axis round(String quantity, Unit unit, Range range, int steps) {
        Range wide = range.widened(range.magnitude() * 1e-3);
        BigDecimal step = Ticks.step(wide.span(), steps);
        double low = Ticks.outward(step, wide.low(), RoundingMode.FLOOR).doubleValue();
        double high = Ticks.outward(step, wide.high(), RoundingMode.CEILING).doubleValue();
        return linear(quantity, unit, new Range(low, high), step);
    }

    /** An axis that begins and ends exactly where a range does; about so many steps. */
    static Axis exact(String quantity, Unit unit, Range range, int steps) {
        return linear(quantity, unit, range, Ticks.step(range.span(), steps));
    }

    private static Axis linear(String quantity, Unit unit, Range range, BigDecimal step) {
        AxisUnit written = AxisUnit.of(unit, range.magnitude());
        int decimals = written.decimals(step);
        List<Tick> ticks = Ticks.multiples(step, range.low(), range.high()).stream()
                .map(t -> new Tick(t.doubleValue(), written.text(t, decimals)))
                .toList();
        return new Axis(written.label(quantity), new Scale.Linear(range.low(), range.high()), ticks);
    }

    /** A logarithmic axis that holds a range, which begins above 0; it ends on round numbers where these are near. */
    static Axis logarithmic(String quantity, Unit unit, Range range) {
        double room = Math.max(1.06, Math.sqrt(LEAST_RATIO / (range.high() / range.low())));
        double low = range.low() / room;
        double high = range.high() * room;
        for (BigDecimal tick : Ticks.logarithmic(low / NEAR, high * NEAR)) {
            low = Math.min(low, tick.doubleValue());
            high = Math.max(high, tick.doubleValue());
        }
        AxisUnit written = AxisUnit.of(unit, high);
        List<Tick> ticks = Ticks.logarithmic(low, high).stream()
                .map(t -> new Tick(t.doubleValue(), written.text(t, written.decimals(t))))
                .toList();
        return new Axis(written.label(quantity), new Scale.Logarithmic(low, high), ticks);
    }

    /** An axis on which only the named places count: bars side by side. */
    static Axis named(String label, Range range, List<Tick> names) {
        return new Axis(label, new Scale.Linear(range.low(), range.high()), names);
    }
}
