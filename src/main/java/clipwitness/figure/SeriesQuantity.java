package clipwitness.figure;

import clipwitness.figure.chart.Axes;
import clipwitness.figure.chart.Axis;
import clipwitness.figure.chart.Extent;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import java.util.List;
import java.util.Optional;

/** What is drawn against the gain control. */
enum SeriesQuantity {
    /** Distortion. */
    THD("thd", "Distortion (THD)", Unit.PERCENT, true, "distortion", WaveformQuantity.THD, Optional.empty()),
    /** Level. */
    LEVEL("level", "Level (rms)", Unit.VOLT, true, "level", WaveformQuantity.RMS, Optional.empty()),
    /** Onset of clipping, upper and lower half. */
    ONSET(
            "onset",
            "Onset, input",
            Unit.VOLT,
            true,
            "onset of clipping",
            WaveformQuantity.ONSET_UP,
            Optional.of(WaveformQuantity.ONSET_DOWN)),
    /** Crest factor. */
    CREST("crest", "Crest factor", Unit.ONE, false, "crest factor", WaveformQuantity.CREST_FACTOR, Optional.empty()),
    /** Asymmetry. */
    ASYMMETRY("asymmetry", "Asymmetry", Unit.PERCENT, false, "asymmetry", WaveformQuantity.ASYMMETRY, Optional.empty()),
    /** Asymmetry of the clip levels, from the output at the input's mean. */
    CLIP_ASYMMETRY(
            "clip-asymmetry",
            "Clip asymmetry",
            Unit.PERCENT,
            false,
            "asymmetry of the clip levels",
            WaveformQuantity.CLIP_ASYMMETRY,
            Optional.empty());

    private static final double ROOM_BELOW_BOUND = 1.8;

    private final String key;
    private final String axis;
    private final Unit unit;
    private final boolean logarithmic;
    private final String words;
    private final WaveformQuantity first;
    private final Optional<WaveformQuantity> second;

    SeriesQuantity(
            String key,
            String axis,
            Unit unit,
            boolean logarithmic,
            String words,
            WaveformQuantity first,
            Optional<WaveformQuantity> second) {
        this.key = key;
        this.axis = axis;
        this.unit = unit;
        this.logarithmic = logarithmic;
        this.words = words;
        this.first = first;
        this.second = second;
    }

    /** End of the figure's name. */
    String key() {
        return key;
    }

    /** In words, without capital. */
    String words() {
        return words;
    }

    /** The figures that are drawn: the first with filled markers, a second with hollow ones. */
    List<WaveformQuantity> quantities() {
        return second.map(s -> List.of(first, s)).orElse(List.of(first));
    }

    /**
     * An axis that holds what is drawn; logarithmic where the quantity is, and all of it lies above zero.
     * Below a bound there is room for its arrow.
     */
    Axis axis(Axes axes, Extent range, boolean bounds, int steps) {
        return logarithmic && range.low() > 0
                ? axes.logarithmic(axis, unit, bounds ? range.with(range.low() / ROOM_BELOW_BOUND) : range)
                : axes.round(axis, unit, range, steps);
    }
}
