package clipwitness.measure.transfer;

import clipwitness.measure.Measured;
import clipwitness.measure.Source;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;

/**
 * Width of the knee on the upper side of a transfer curve: 20 lg of the ratio of the input levels where the slope has fallen by 90 % and by
 * 10 % of the way from the small-signal slope to the slope at the input's peak, in dB. 0 dB for a perfect corner; 14.9 dB for tanh
 * driven far, 19.1 dB for an arctangent. Averaging widens the knee as a blur widens a line: by the root of the squares, the blur in
 * proportion to the stretches. Slopes over stretches twice as wide tell how much; it is taken off, and counts as a bound of the method. So does half
 * of each stretch, for where in it the slope passes its level is not seen.
 */
final class Knee {
    /** Where the stretch of a slope is wider than this times its distance from the middle, the beginning of the knee is a guess. */
    private static final double WIDEST_OVER_PLACE = 2;

    private Knee() {}

    static Measured of(Transfer transfer, double smallSignalSlope, double onset) {
        SlopeProfile narrow = new SlopeProfile(transfer, smallSignalSlope, onset, 1);
        if (narrow.last() > smallSignalSlope / 2) {
            return Measured.refused(Unit.DECIBEL, FigureReason.NO_KNEE);
        }
        SlopeProfile wide = new SlopeProfile(transfer, smallSignalSlope, onset, 2);
        double way = smallSignalSlope - narrow.last();
        double beginning = smallSignalSlope - 0.1 * way;
        double end = smallSignalSlope - 0.9 * way;
        double widened = width(narrow, beginning, end);
        double widenedTwice = width(wide, beginning, end);
        double blur = Math.max(0, (widenedTwice * widenedTwice - widened * widened) / 3);
        double width = Math.sqrt(Math.max(0, widened * widened - blur));
        double noise = Math.hypot(narrow.relativeUncertainty(beginning), narrow.relativeUncertainty(end));
        if (!(narrow.relativeReach(beginning) < WIDEST_OVER_PLACE)) {
            return Measured.refused(Unit.DECIBEL, FigureReason.FEW_STRAIGHT_SAMPLES);
        }
        double stretch = Decibels.PER_RELATIVE_AMPLITUDE
                * Math.hypot(narrow.relativeReach(beginning), narrow.relativeReach(end));
        return Measured.withNoise(width, Unit.DECIBEL, Decibels.PER_RELATIVE_AMPLITUDE * noise)
                .plus(Source.METHOD, Math.hypot(widened - width, stretch) / Math.sqrt(3));
    }

    private static double width(SlopeProfile slopes, double beginning, double end) {
        return Math.max(0, Decibels.ofAmplitude(slopes.crossing(end) / slopes.crossing(beginning)));
    }
}
