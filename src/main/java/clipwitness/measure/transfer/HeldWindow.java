package clipwitness.measure.transfer;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.reason.FigureReason;
import java.util.Optional;
import java.util.function.Function;

/**
 * What it adds to the figures of the small-signal line that its window may not be smaller than 5 % of the input's amplitude. Far above its
 * onset a curve bends inside that window. The difference to the figures over 0.75 of the smaller onset is then a bound of the method,
 * u = a / sqrt 3; without limit the bound is 0.
 *
 * @param unlimited the line over 0.75 of the smaller onset, where the window of the definition is wider
 */
record HeldWindow(Optional<SmallSignal> unlimited) {
    /** An onset known worse than this share of itself is none: the order of two states could not be told from it. */
    private static final double WORST_KNOWN = 1.0 / 3;

    /** The gain in dB with the bound. */
    Measured.Value gain(Measured.Value gain) {
        return unlimited
                .map(u -> gain.plus(Source.METHOD, bound(gain, u.gain(0).number())))
                .orElse(gain);
    }

    /**
     * An onset with the bound; refused where the window is held and the expanded uncertainty exceeds a third of the onset.
     *
     * @param onset over the window of the definition, V
     * @param side  the same side of the line without limit
     */
    Measured onset(Measured onset, Function<SmallSignal, Optional<OnsetPoint>> side) {
        Optional<Measured.Value> known = onset.asValue();
        if (unlimited.isEmpty() || known.isEmpty()) {
            return onset;
        }
        return side.apply(unlimited.orElseThrow())
                .map(o -> known.orElseThrow().plus(Source.METHOD, bound(known.orElseThrow(), o.input())))
                .filter(v -> v.expanded() <= WORST_KNOWN * v.number())
                .<Measured>map(v -> v)
                .orElse(Measured.refused(onset.unit(), FigureReason.STRAIGHT_PART_SMALL));
    }

    private static double bound(Measured.Value figure, double other) {
        return Math.abs(figure.number() - other) / Math.sqrt(3);
    }
}
