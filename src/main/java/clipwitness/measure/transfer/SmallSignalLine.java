package clipwitness.measure.transfer;

import clipwitness.quantity.Decibels;

/**
 * The straight part of a transfer curve.
 *
 * @param slope             dy/dx at the input's mean, a ratio
 * @param slopeUncertainty  standard uncertainty of the slope
 * @param centre            output at the input's mean, V
 * @param centreUncertainty standard uncertainty of that, V
 * @param window            how far from the input's mean the samples lie that it was found from, V
 */
record SmallSignalLine(double slope, double slopeUncertainty, double centre, double centreUncertainty, double window) {
    private static final double ONE_DECIBEL_SHORT = Decibels.toAmplitude(-1);

    /** The line of the curve seen from the other end. */
    SmallSignalLine mirrored() {
        return new SmallSignalLine(slope, slopeUncertainty, -centre, centreUncertainty, window);
    }

    /** Output 1 dB short of the line, counted from the centre, V. */
    double lowered(double input) {
        return centre + ONE_DECIBEL_SHORT * slope * input;
    }

    /** Whether the slope is known well enough to tell 1 dB from nothing: to that with its expanded uncertainty. */
    boolean tellsOneDecibel() {
        return 2 * slopeUncertainty < (1 - ONE_DECIBEL_SHORT) * slope;
    }

    /** Standard uncertainty of {@link #lowered}, V. */
    double loweredUncertainty(double input) {
        return Math.hypot(centreUncertainty, ONE_DECIBEL_SHORT * input * slopeUncertainty);
    }
}
