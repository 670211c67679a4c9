package clipwitness.figure;

import clipwitness.figure.chart.Axis;
import clipwitness.figure.chart.Extent;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.Optional;

/** What is drawn against the gain control. */
enum SeriesQuantity {
    /** Distortion. */
    THD("thd", Unit.PERCENT, true, WaveformQuantity.THD, Optional.empty()),
    /** Level. */
    LEVEL("level", Unit.VOLT, true, WaveformQuantity.RMS, Optional.empty()),
    /** Onset of clipping, upper and lower half. */
    ONSET("onset", Unit.VOLT, true, WaveformQuantity.ONSET_UP, Optional.of(WaveformQuantity.ONSET_DOWN)),
    /** Crest factor. */
    CREST("crest", Unit.ONE, false, WaveformQuantity.CREST_FACTOR, Optional.empty()),
    /** Asymmetry. */
    ASYMMETRY("asymmetry", Unit.PERCENT, false, WaveformQuantity.ASYMMETRY, Optional.empty()),
    /** Asymmetry of the clip levels, from the output at the input's mean. */
    CLIP_ASYMMETRY("clip-asymmetry", Unit.PERCENT, false, WaveformQuantity.CLIP_ASYMMETRY, Optional.empty());

    private static final double ROOM_BELOW_BOUND = 1.8;

    private final String key;
    private final Unit unit;
    private final boolean logarithmic;
    private final WaveformQuantity first;
    private final Optional<WaveformQuantity> second;

    SeriesQuantity(
            String key, Unit unit, boolean logarithmic, WaveformQuantity first, Optional<WaveformQuantity> second) {
        this.key = key;
        this.unit = unit;
        this.logarithmic = logarithmic;
        this.first = first;
        this.second = second;
    }

    /** End of the figure's name, and of the names of its words. */
    String key() {
        return key;
    }

    /** The figures that are drawn: the first with filled markers, a second with hollow ones. */
    List<WaveformQuantity> quantities() {
        return second.map(s -> List.of(first, s)).orElse(List.of(first));
    }

    /**
     * An axis that holds what is drawn; logarithmic where the quantity is, and all of it lies above zero.
     * Below a bound there is room for its arrow.
     */
    Axis axis(FigureContext context, Extent range, boolean bounds, int steps) {
        String axis = context.say("axis.series." + key);
        return logarithmic && range.low() > 0
                ? context.axes().logarithmic(axis, unit, bounds ? range.with(range.low() / ROOM_BELOW_BOUND) : range)
                : context.axes().round(axis, unit, range, steps);
    }
}
