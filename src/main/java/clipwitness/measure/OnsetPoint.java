package clipwitness.measure;

import clipwitness.quantity.Unit;
import clipwitness.signal.PolynomialFit;
import java.util.Optional;

/**
 * Onset of clipping on the upper side of a transfer curve: the distance of the input from its mean beyond which the output stays 1 dB
 * or more short of the small-signal line. The last crossing counts; it is looked for from the input's peak inwards on the curve averaged
 * over short stretches, then found on a straight line through the samples around it; the distance of the two counts as uncertainty.
 * Where that neighbourhood lies at the end of the line's own window, the uncertainties of both add up: what lifts it tilts the line down.
 *
 * @param input   distance, V
 * @param noise   standard uncertainty, V
 * @param leaving how fast the output leaves the lowered line there, as a slope
 */
record OnsetPoint(double input, double noise, double leaving) {
    private static final double NEIGHBOURHOOD = 0.08;
    private static final double WIDE = 1.15;
    private static final double LEAST_LEAVING = 0.02;

    /** From this share of the window on, a cubic's slope at the middle falls when a sample rises: its weights go as 5 x - 7 x³. */
    private static final double AGAINST_SLOPE = Math.sqrt(5.0 / 7);

    static Optional<OnsetPoint> of(OutputProfile profile, CentreLine line) {
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
                1,
                profile.transfer().scatter());
        double found = crossing(local, line, rough);
        double leaving = leaving(profile, line, found);
        double own = profile.transfer().scatter() * Math.sqrt(local.varianceAt(found));
        double ofLine = line.loweredUncertainty(found);
        double spread = (found - rough) / Math.sqrt(12);
        boolean shared = found > AGAINST_SLOPE * line.window() && found * (1 - NEIGHBOURHOOD) < line.window();
        double both = shared ? own + ofLine : Math.hypot(own, ofLine);
        return Optional.of(new OnsetPoint(found, Math.hypot(both / leaving, spread), leaving));
    }

    private static double rough(OutputProfile profile, CentreLine line, int place) {
        double before = profile.output(place) - line.lowered(profile.input(place));
        double after = profile.output(place + 1) - line.lowered(profile.input(place + 1));
        double share = before > 0 ? before / (before - after) : 0;
        return profile.input(place) + share * (profile.input(place + 1) - profile.input(place));
    }

    private static double crossing(PolynomialFit local, CentreLine line, double near) {
        double below = near * (1 - NEIGHBOURHOOD);
        double above = near * (1 + NEIGHBOURHOOD);
        double atBelow = local.at(below) - line.lowered(below);
        double atAbove = local.at(above) - line.lowered(above);
        if (!(atBelow > 0 && atAbove < 0)) {
            return near;
        }
        return below + (above - below) * atBelow / (atBelow - atAbove);
    }

    /** Mean slope over a stretch that is wide enough to be known. */
    private static double leaving(OutputProfile profile, CentreLine line, double input) {
        double low = input / WIDE;
        double high = Math.min(input * WIDE, profile.input(profile.places() - 1));
        double fall = profile.at(low) - line.lowered(low) - profile.at(high) + line.lowered(high);
        return Math.max(fall / (high - low), LEAST_LEAVING * line.slope());
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
        return 2 * whole.standardUncertainty() < input
                ? whole
                : Measured.refused(whole.unit(), "noise hides where the curve leaves its line");
    }
}
