package clipwitness.measure;

import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;

/**
 * Width of the knee on the upper side of a transfer curve: 20 lg of the ratio of the input levels where the slope has fallen by 90 % and by
 * 10 % of the way from the small-signal slope to the slope at the input's peak, in dB. 0 dB for a perfect corner; 14.9 dB for tanh
 * driven far, 19.1 dB for an arctangent. Slopes over stretches twice as wide tell how much the averaging widens the knee; that
 * counts as uncertainty of the method.
 */
final class Knee {
    private Knee() {}

    static Measured of(Transfer transfer, double smallSignalSlope) {
        SlopeProfile narrow = new SlopeProfile(transfer, smallSignalSlope, 1);
        SlopeProfile wide = new SlopeProfile(transfer, smallSignalSlope, 2);
        if (narrow.last() > smallSignalSlope / 2) {
            return Measured.refused(Unit.DECIBEL, "the slope at the input's peak exceeds half the small-signal slope");
        }
        double way = smallSignalSlope - narrow.last();
        double beginning = smallSignalSlope - 0.1 * way;
        double end = smallSignalSlope - 0.9 * way;
        double width = width(narrow, beginning, end);
        double noise = Math.hypot(narrow.relativeUncertainty(beginning), narrow.relativeUncertainty(end));
        double blur = Math.abs(width(wide, beginning, end) - width) / Math.sqrt(3);
        return Measured.withNoise(width, Unit.DECIBEL, Decibels.PER_RELATIVE_AMPLITUDE * noise)
                .plus(Source.METHOD, blur);
    }

    private static double width(SlopeProfile slopes, double beginning, double end) {
        return Math.max(0, Decibels.ofAmplitude(slopes.crossing(end) / slopes.crossing(beginning)));
    }
}
