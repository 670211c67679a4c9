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
 * proportion to the stretches. Slopes over stretches twice as wide tell how much; it is taken off, and counts as a bound of the method. So does what a
 * parabola misses of a curve that bends over its own distance from the middle. Where noise lets a slope pass its level more than once, the distance of the first
 * and the last time counts as noise.
 */
final class Knee {
    private Knee() {}

    static Measured of(Transfer transfer, double smallSignalSlope, double onset) {
        SlopeProfile narrow = SlopeProfile.of(transfer, smallSignalSlope, onset);
        if (narrow.last() > smallSignalSlope / 2) {
            return Measured.refused(Unit.DECIBEL, FigureReason.NO_KNEE);
        }
        SlopeProfile wide = narrow.widened(2);
        double way = smallSignalSlope - narrow.last();
        double upper = smallSignalSlope - 0.1 * way;
        double lower = smallSignalSlope - 0.9 * way;
        SlopeProfile.Passage beginning = narrow.passage(upper);
        SlopeProfile.Passage end = narrow.passage(lower);
        double widened = width(beginning, end);
        double widenedTwice = width(wide.passage(upper), wide.passage(lower));
        double blur = Math.max(0, (widenedTwice * widenedTwice - widened * widened) / 3);
        double width = Math.sqrt(Math.max(0, widened * widened - blur));
        double noise = Math.hypot(narrow.relativeUncertainty(beginning, 0.1), narrow.relativeUncertainty(end, 0.9));
        if (!narrow.resolves(beginning)) {
            return Measured.refused(Unit.DECIBEL, FigureReason.FEW_STRAIGHT_SAMPLES);
        }
        double curved = Decibels.PER_RELATIVE_AMPLITUDE * Math.hypot(narrow.curved(beginning), narrow.curved(end));
        double ambiguous = Math.hypot(beginning.ambiguity(), end.ambiguity());
        return Measured.withNoise(
                        width,
                        Unit.DECIBEL,
                        Math.hypot(Decibels.PER_RELATIVE_AMPLITUDE * noise, ambiguous / Math.sqrt(12)))
                .plus(Source.METHOD, Math.hypot(widened - width, curved) / Math.sqrt(3));
    }

    private static double width(SlopeProfile.Passage beginning, SlopeProfile.Passage end) {
        return Math.max(0, Decibels.ofAmplitude(end.middle() / beginning.middle()));
    }
}
