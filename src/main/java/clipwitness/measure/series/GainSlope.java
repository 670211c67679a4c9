package clipwitness.measure.series;

import clipwitness.signal.ShapePreservingInterpolation;

/**
 * Slope of a figure over the gain control at one of the captured settings, by shape-preserving interpolation. Between the settings nothing is
 * known, so the slope has an error of its own: its bound is the largest difference to the chords to the neighbouring settings, which is what
 * each of them says without the other. Two settings alone have one chord: it may be wrong by itself.
 *
 * @param slope in the figure's unit for one percent of rotation
 * @param bound bound of its error, likewise, 0 or more
 */
public record GainSlope(double slope, double bound) {
    /** A bound is taken as the half width of a rectangular distribution (JCGM 100:2008, 4.3.7). */
    private static final double RECTANGULAR = Math.sqrt(3);

    /** A knob's error is not derived from a slope that is known worse (measurement book, section 5). */
    private static final double WELL_KNOWN = 1.0 / 3;

    /**
     * The slope at one of some settings.
     *
     * @param gains   positions of the gain control, percent of rotation, ascending; two or more
     * @param figures the figure at each
     * @param halves  half width of what each is only known to lie in, 0 where it is known
     * @param at      index of the setting
     */
    public static GainSlope at(double[] gains, double[] figures, double[] halves, int at) {
        double slope = new ShapePreservingInterpolation(gains, figures).slopeAtPoint(at);
        if (gains.length == 2) {
            return new GainSlope(slope, Math.abs(slope) + halves[1 - at] / Math.abs(gains[1] - gains[0]));
        }
        double bound = 0;
        for (int other = Math.max(0, at - 1); other <= Math.min(gains.length - 1, at + 1); other++) {
            if (other != at) {
                double chord = (figures[other] - figures[at]) / (gains[other] - gains[at]);
                double open = halves[other] / Math.abs(gains[other] - gains[at]);
                bound = Math.max(bound, Math.abs(chord - slope) + open);
            }
        }
        return new GainSlope(slope, bound);
    }

    /** Root mean square of the slopes that may be true, the figure's unit for one percent. */
    public double effective() {
        return Math.hypot(slope, bound / RECTANGULAR);
    }

    /** Whether its standard uncertainty is at most a third of it. */
    public boolean isWellKnown() {
        return bound / RECTANGULAR <= WELL_KNOWN * Math.abs(slope);
    }

    /** The same slope of the figure in another unit. */
    public GainSlope times(double sensitivity) {
        return new GainSlope(slope * sensitivity, bound * Math.abs(sensitivity));
    }
}
