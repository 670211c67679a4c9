package clipwitness.figure;

import clipwitness.figure.chart.Axis;
import clipwitness.figure.chart.Extent;
import clipwitness.measure.WaveformQuantity;
import java.util.List;

/** What one picture against the gain control shows: the figures whose rows in {@link WaveformQuantity} name that picture. */
final class SeriesQuantity {
    private static final List<SeriesQuantity> ALL = WaveformQuantity.pictures().entrySet().stream()
            .map(e -> new SeriesQuantity(e.getKey(), e.getValue()))
            .toList();

    private static final double ROOM_BELOW_BOUND = 1.8;

    private final String key;
    private final List<WaveformQuantity> quantities;

    private SeriesQuantity(String key, List<WaveformQuantity> quantities) {
        this.key = key;
        this.quantities = List.copyOf(quantities);
    }

    /** All of them, in the order of the pictures. */
    static List<SeriesQuantity> values() {
        return ALL;
    }

    /** End of the figure's name, and of the names of its words. */
    String key() {
        return key;
    }

    /** The figures that are drawn: the first with filled markers, a second with hollow ones. */
    List<WaveformQuantity> quantities() {
        return quantities;
    }

    /** Whether it shows the upper and the lower half. */
    boolean hasHalves() {
        return quantities.size() > 1;
    }

    /**
     * An axis that holds what is drawn; logarithmic where the quantity is, and all of it lies above zero.
     * Below a bound there is room for its arrow.
     */
    Axis axis(FigureContext context, Extent range, boolean bounds, int steps) {
        String axis = context.say("axis.series." + key);
        WaveformQuantity first = quantities.get(0);
        return first.logarithmic() && range.low() > 0
                ? context.axes()
                        .logarithmic(axis, first.unit(), bounds ? range.with(range.low() / ROOM_BELOW_BOUND) : range)
                : context.axes().round(axis, first.unit(), range, steps);
    }
}
