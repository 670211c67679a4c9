package clipwitness.measure;

import clipwitness.quantity.Decibels;
import clipwitness.signal.PolynomialFit;
import java.util.Optional;

/**
 * Onset of clipping on the upper side of a transfer curve: the distance of the input from its mean beyond which the output stays 1 dB
 * or more short of the small-signal line. The last crossing counts; it is looked for from the input's peak inwards on the curve averaged
 * over short stretches, then found on a parabola through the samples around it.
 *
 * @param input distance, V
 * @param noise standard uncertainty, V
 * @param leaving how fast the output leaves the lowered line there, as a slope
 */
record OnsetPoint(double input, double noise, double leaving) {
    private static final double SHORTFALL = Decibels.toAmplitude(-1);
    private static final double STRIDE = 0.96;
    private static final double STRETCH = 0.05;
    private static final double NEIGHBOURHOOD = 0.15;
    private static final double INNERMOST = 0.005;

    static Optional<OnsetPoint> of(Transfer transfer, CentreLine line) {
        double outer = transfer.amplitude() * (1 - STRETCH);
        if (shortfall(transfer, line, outer) <= 0) {
            return Optional.empty();
        }
        double inner = outer * STRIDE;
        while (inner > INNERMOST * transfer.amplitude() && shortfall(transfer, line, inner) > 0) {
            inner *= STRIDE;
        }
        double rough = inner / Math.sqrt(STRIDE);
        PolynomialFit local =
                PolynomialFit.around(transfer.points(), rough, NEIGHBOURHOOD * rough, 2, transfer.scatter());
        double found = crossing(local, line, rough * (1 - NEIGHBOURHOOD), rough * (1 + NEIGHBOURHOOD));
        double leaving = Math.max(SHORTFALL * line.slope() - local.slopeAt(found), 0.05 * line.slope());
        double own = transfer.scatter() * Math.sqrt(local.varianceAt(found));
        double lines = Math.hypot(line.centreUncertainty(), SHORTFALL * found * line.slopeUncertainty());
        return Optional.of(new OnsetPoint(found, Math.hypot(own, lines) / leaving, leaving));
    }

    /** How far the output averaged over a short stretch lies below the lowered line, V. */
    private static double shortfall(Transfer transfer, CentreLine line, double input) {
        PolynomialFit local =
                PolynomialFit.around(transfer.points(), input, STRETCH * input, 1, Double.POSITIVE_INFINITY);
        return lowered(line, input) - local.at(input);
    }

    private static double lowered(CentreLine line, double input) {
        return line.centre() + SHORTFALL * line.slope() * input;
    }

    private static double crossing(PolynomialFit local, CentreLine line, double low, double high) {
        double below = low;
        double above = high;
        for (int i = 0; i < 50; i++) {
            double middle = (below + above) / 2;
            if (local.at(middle) > lowered(line, middle)) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return (below + above) / 2;
    }
}
