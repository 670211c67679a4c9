package clipwitness.measure;

/**
 * The straight part of a transfer curve.
 *
 * @param slope             dy/dx at the input's mean, a ratio
 * @param slopeUncertainty  standard uncertainty of the slope
 * @param centre            output at the input's mean, V
 * @param centreUncertainty standard uncertainty of that, V
 */
record CentreLine(double slope, double slopeUncertainty, double centre, double centreUncertainty) {
    /** The line of the curve seen from the other end. */
    CentreLine mirrored() {
        return new CentreLine(slope, slopeUncertainty, -centre, centreUncertainty);
    }
}
