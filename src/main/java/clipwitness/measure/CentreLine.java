package clipwitness.measure;

import clipwitness.quantity.Decibels;

/**
 * The straight part of a transfer curve.
 *
 * @param slope             dy/dx at the input's mean, a ratio
 * @param slopeUncertainty  standard uncertainty of the slope
 * @param centre            output at the input's mean, V
 * @param centreUncertainty standard uncertainty of that, V
 */
record CentreLine(double slope, double slopeUncertainty, double centre, double centreUncertainty) {
    private static final double ONE_DECIBEL_SHORT = Decibels.toAmplitude(-1);

    /** The line of the curve seen from the other end. */
    CentreLine mirrored() {
        return new CentreLine(slope, slopeUncertainty, -centre, centreUncertainty);
    }

    /** Output 1 dB short of the line, counted from the centre, V. */
    double lowered(double input) {
        return centre + ONE_DECIBEL_SHORT * slope * input;
    }

    /** Standard uncertainty of {@link #lowered}, V. */
    double loweredUncertainty(double input) {
        return Math.hypot(centreUncertainty, ONE_DECIBEL_SHORT * input * slopeUncertainty);
    }
}
