package clipwitness.figure.chart;

import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * Makes axes with round marks.
 *
 * @param numbers numbers as the report's language writes them
 */
public record Axes(NumberText numbers) {
    private static final double LEAST_RATIO = 2.2;
    private static final double NEAR_RATIO = 1.4;
    private static final double LEAST_SPAN = 1e-3;
    private static final double NEAR_END = 5e-3;
    private static final int LEAST_MARKS = 3;
    private static final int STEPS_OF_LITTLE = 5;

    /** An axis whose ends are round numbers and that holds a range; at most so many steps, or one or two more. */
    public Axis round(String quantity, Unit unit, Extent range, int steps) {
        Extent wide = range.widened(range.magnitude() * LEAST_SPAN);
        BigDecimal step = Ticks.step(wide.span(), steps);
        double low = Ticks.outward(step, wide.low(), RoundingMode.FLOOR).doubleValue();
        double high = Ticks.outward(step, wide.high(), RoundingMode.CEILING).doubleValue();
        return linear(quantity, unit, new Extent(low, high), step);
    }

    /** An axis that begins and ends where a range does, or at a round number that is as good as there; at most so many steps. */
    public Axis exact(String quantity, Unit unit, Extent range, int steps) {
        BigDecimal step = Ticks.step(range.span(), steps);
        Extent snapped = new Extent(snapped(range.low(), step, range), snapped(range.high(), step, range));
        return linear(quantity, unit, snapped, step);
    }

    private static double snapped(double end, BigDecimal step, Extent range) {
        double round = Math.rint(end / step.doubleValue()) * step.doubleValue();
        return Math.abs(round - end) < NEAR_END * range.span() ? round : end;
    }

    private Axis linear(String quantity, Unit unit, Extent range, BigDecimal step) {
        AxisUnit written = AxisUnit.of(unit, range.magnitude());
        List<Axis.Tick> ticks = Ticks.multiples(step, range.low(), range.high()).stream()
                .map(t -> new Axis.Tick(t.doubleValue(), written.text(t, step, numbers)))
                .toList();
        return new Axis(written.label(quantity), new Scale.Linear(range.low(), range.high()), ticks);
    }

    /** A logarithmic axis that holds a range, which begins above 0; it ends on round numbers where these are near. */
    public Axis logarithmic(String quantity, Unit unit, Extent range) {
        double room = Math.max(1.06, Math.sqrt(LEAST_RATIO / (range.high() / range.low())));
        double low = range.low() / room;
        double high = range.high() * room;
        for (BigDecimal tick : Ticks.logarithmic(low / NEAR_RATIO, high * NEAR_RATIO)) {
            low = Math.min(low, tick.doubleValue());
            high = Math.max(high, tick.doubleValue());
        }
        AxisUnit written = AxisUnit.of(unit, high);
        return new Axis(written.label(quantity), new Scale.Logarithmic(low, high), marks(low, high, written));
    }

    /** The marks of a logarithmic axis; equal steps where it spans so little that it would have next to none. */
    private List<Axis.Tick> marks(double low, double high, AxisUnit written) {
        List<BigDecimal> ticks = Ticks.logarithmic(low, high);
        if (ticks.size() >= LEAST_MARKS) {
            return ticks.stream()
                    .map(t -> new Axis.Tick(t.doubleValue(), written.text(t, t, numbers)))
                    .toList();
        }
        BigDecimal step = Ticks.step(high - low, STEPS_OF_LITTLE);
        return Ticks.multiples(step, low, high).stream()
                .map(t -> new Axis.Tick(t.doubleValue(), written.text(t, step, numbers)))
                .toList();
    }

    /** A mark at a place with its number, as somebody set it. */
    public Axis.Tick tick(double value) {
        return new Axis.Tick(value, numbers.nominal(value, Unit.ONE));
    }
}
