package clipwitness.measure.transfer;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import java.util.Optional;

/**
 * Onset of clipping on the upper side of a transfer curve: the distance of the input from its mean beyond which the output stays 1 dB
 * or more short of the small-signal line. The last crossing counts; it is looked for from the input's peak inwards on the curve averaged
 * over short stretches, then found on a parabola through the samples around it; the distance of the two counts as uncertainty.
 *
 * @param input   distance, V
 * @param noise   standard uncertainty, V
 * @param leaving how fast the output leaves the lowered line there, as a slope
 */
record OnsetPoint(double input, double noise, double leaving) {
    private static final int MOST_SHIFTS = 4;
    private static final double NEAR = 1.08;
    private static final double WIDE = 1.15;
    private static final double KNOWN = 0.15;

    /** Noise of the difference of two places of the profile over that of the point. */
    private static final double TWO_STRETCHES = 1.8;

    private static final double LEAST_LEAVING = 0.02;

    static Optional<OnsetPoint> of(OutputProfile profile, SmallSignalLine line) {
        int place = profile.places() - 1;
        if (profile.output(place) >= line.lowered(profile.input(place))) {
            return Optional.empty();
        }
        while (place > 0 && profile.output(place) < line.lowered(profile.input(place))) {
            place--;
        }
        double rough = rough(profile, line, place);
        OuterStretch stretch = around(profile, line, rough);
        double found = stretch.crossing(line);
        double own = profile.transfer().scatter() * Math.sqrt(stretch.parabola().varianceAt(found));
        double leaving = leaving(profile, line, found, own);
        double both = Math.hypot(own, line.loweredUncertainty(found)) / leaving;
        double spread = (found - rough) * (stretch.sparse() ? 1 / Math.sqrt(3) : 1 / Math.sqrt(12));
        return Optional.of(new OnsetPoint(found, Math.hypot(both, spread), leaving));
    }

    private static double rough(OutputProfile profile, SmallSignalLine line, int place) {
        double before = profile.output(place) - line.lowered(profile.input(place));
        double after = profile.output(place + 1) - line.lowered(profile.input(place + 1));
        double share = before > 0 ? before / (before - after) : 0;
        return profile.input(place) + share * (profile.input(place + 1) - profile.input(place));
    }

    /** The stretch that holds the crossing: few samples leave the first one beside it. */
    private static OuterStretch around(OutputProfile profile, SmallSignalLine line, double rough) {
        OuterStretch stretch = OuterStretch.of(
                profile.transfer().points(), rough, profile.transfer().scatter());
        for (int shift = 0; shift < MOST_SHIFTS && stretch.liesBeyond(line); shift++) {
            double inner = stretch.place() * (1 - OuterStretch.REACH);
            stretch = OuterStretch.of(
                    profile.transfer().points(), inner, profile.transfer().scatter());
        }
        return stretch;
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
