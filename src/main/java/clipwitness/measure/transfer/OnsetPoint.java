package clipwitness.measure.transfer;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import clipwitness.signal.PolynomialFit;
import clipwitness.signal.Root;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * Onset of clipping on the upper side of a transfer curve: the distance of the input from its mean beyond which the output stays 1 dB
 * or more short of the small-signal line. The last crossing counts; it is looked for from the input's peak inwards on the curve averaged
 * over short stretches, then found on a parabola through the samples around it; the distance of the two counts as uncertainty.
 * Where that neighbourhood lies in the line's own window, the noise of both correlates.
 *
 * @param input   distance, V
 * @param noise   standard uncertainty, V
 * @param leaving how fast the output leaves the lowered line there, as a slope
 */
record OnsetPoint(double input, double noise, double leaving) {
    private static final double NEIGHBOURHOOD = 0.08;
    private static final double NEAR = 1.08;
    private static final double WIDE = 1.15;
    private static final double KNOWN = 0.15;

    /** Noise of the difference of two places of the profile over that of the point. */
    private static final double TWO_STRETCHES = 1.8;

    private static final double LEAST_LEAVING = 0.02;

    /** Variance of a cubic's slope at the middle of n evenly spread points of unit variance over -1 to 1, times n. */
    private static final double SLOPE_VARIANCE = 75.0 / 4;

    static Optional<OnsetPoint> of(OutputProfile profile, SmallSignalLine line) {
        int place = profile.places() - 1;
        if (profile.output(place) >= line.lowered(profile.input(place))) {
            return Optional.empty();
        }
        while (place > 0 && profile.output(place) < line.lowered(profile.input(place))) {
            place--;
        }
        double rough = rough(profile, line, place);
        PolynomialFit local = PolynomialFit.around(
                profile.transfer().points(),
                rough,
                NEIGHBOURHOOD * rough,
                2,
                profile.transfer().scatter());
        double found = crossing(local, line, rough);
        double own = profile.transfer().scatter() * Math.sqrt(local.varianceAt(found));
        double leaving = leaving(profile, line, found, own);
        double ofLine = line.loweredUncertainty(found);
        double spread = (found - rough) / Math.sqrt(12);
        double correlation = correlation(found / line.window());
        double both = Math.sqrt(own * own + ofLine * ofLine - 2 * correlation * own * ofLine);
        return Optional.of(new OnsetPoint(found, Math.hypot(both / leaving, spread), leaving));
    }

    /**
     * Correlation of the output around a place with the line there, which its samples help to find: positive inside the window, where a
     * sample that rises lifts both, negative at its ends, where it tilts the line down. The slope of a cubic holds a sample at z, the window's
     * half width being 1, with a share of (75 z - 105 z³) / 4n.
     *
     * @param z distance of the place from the middle, over half the window
     */
    private static double correlation(double z) {
        double inside = Math.max(0, Math.min((1 - z * (1 - NEIGHBOURHOOD)) / (2 * NEIGHBOURHOOD * z), 1));
        return inside * Math.sqrt(SLOPE_VARIANCE * NEIGHBOURHOOD * z) * (z - 1.4 * z * z * z);
    }

    private static double rough(OutputProfile profile, SmallSignalLine line, int place) {
        double before = profile.output(place) - line.lowered(profile.input(place));
        double after = profile.output(place + 1) - line.lowered(profile.input(place + 1));
        double share = before > 0 ? before / (before - after) : 0;
        return profile.input(place) + share * (profile.input(place + 1) - profile.input(place));
    }

    private static double crossing(PolynomialFit local, SmallSignalLine line, double near) {
        double below = near * (1 - NEIGHBOURHOOD);
        double above = near * (1 + NEIGHBOURHOOD);
        DoubleUnaryOperator excess = x -> local.at(x) - line.lowered(x);
        return excess.applyAsDouble(below) > 0
                ? Root.between(excess, below, above).orElse(near)
                : near;
    }

    /**
     * Mean slope around the onset. Behind a perfect corner the onset lies 1 dB, 12 %, further out: the near stretch does not hold it. Where
     * noise hides the slope over that one, a wider one counts.
     */
    private static double leaving(OutputProfile profile, SmallSignalLine line, double input, double noise) {
        double near = fall(profile, line, input, NEAR);
        double spread = TWO_STRETCHES * noise / (input * (NEAR - 1 / NEAR));
        double slope = spread < KNOWN * near ? near : fall(profile, line, input, WIDE);
        return Math.max(slope, LEAST_LEAVING * line.slope());
    }

    private static double fall(OutputProfile profile, SmallSignalLine line, double input, double ratio) {
        double low = input / ratio;
        double high = Math.min(input * ratio, profile.input(profile.places() - 1));
        double fall = profile.at(low) - line.lowered(low) - profile.at(high) + line.lowered(high);
        return fall / (high - low);
    }

    /** The same point, its noise times a factor. */
    OnsetPoint wider(double factor) {
        return new OnsetPoint(input, noise * factor, leaving);
    }

    /**
     * The onset as a figure, V; refused where its expanded uncertainty reaches its value.
     *
     * @param relativeInputNoise standard uncertainty of the input's amplitude over the amplitude
     * @param step               standard uncertainty of the output from steps that no noise dithers, V
     */
    Measured measured(double relativeInputNoise, double step) {
        Measured.Value onset = Measured.withNoise(input, Unit.VOLT, Math.hypot(noise, input * relativeInputNoise));
        Measured.Value whole = step > 0 ? onset.plus(Source.CONVERTER_STEP, step / leaving) : onset;
        return whole.expanded() < input ? whole : Measured.refused(whole.unit(), FigureReason.ONSET_HIDDEN);
    }
}
