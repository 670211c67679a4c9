package clipwitness.reading;

import clipwitness.capture.VerticalScale;
import java.util.Optional;

/** Tells counts of a converter from volts: whole numbers that would leave the screen if they were volts. */
final class Counts {
    private static final double HALF_SCREEN = 5.5;

    private Counts() {}

    /** Whether written values look like counts. */
    static boolean like(double[] written, Preamble preamble, String name, int channel, int channels) {
        double largest = 0;
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        for (double value : written) {
            if (value != Math.rint(value) && !Double.isNaN(value)) {
                return false;
            }
            if (!Double.isNaN(value)) {
                largest = Math.max(largest, Math.abs(value));
                least = Math.min(least, value);
                greatest = Math.max(greatest, value);
            }
        }
        Optional<VerticalScale> scale = new VerticalFacts(preamble).of(name, channel, channels, least, greatest);
        double reach = scale.map(
                        s -> HALF_SCREEN * s.perDivision() + Math.abs(s.offset().orElse(0)))
                .orElse(1.0);
        return largest > reach;
    }
}
