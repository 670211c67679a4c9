package clipwitness.figure.chart;

import java.util.List;

/**
 * An axis: its scale and its marks.
 *
 * @param label quantity and unit, {@code Output, mV}
 * @param scale scale, in the unit without prefix
 * @param ticks marks, rising
 */
public record Axis(String label, Scale scale, List<Tick> ticks) {
    /** Copies what it is given. */
    public Axis {
        ticks = List.copyOf(ticks);
    }

    /** The unit of a label that ends in one, {@code mV}; empty where it has none. */
    String unit() {
        int comma = label.lastIndexOf(", ");
        return comma < 0 ? "" : label.substring(comma + 2);
    }

    /**
     * One mark.
     *
     * @param value where, in the unit without prefix
     * @param text  its number
     */
    public record Tick(double value, String text) {}

    /** A linear axis with marks at named places. */
    public static Axis named(String label, Extent range, List<Tick> names) {
        return new Axis(label, new Scale.Linear(range.low(), range.high()), names);
    }
}
