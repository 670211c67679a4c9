package clipwitness.reading;

import clipwitness.capture.VerticalScale;
import clipwitness.reading.layout.Preamble;
import java.util.Optional;

/**
 * Tells counts of a converter from volts: whole numbers that would leave the screen if they were volts, or, where no scale of the
 * screen is stated, that are written without decimal mark.
 *
 * @param preamble what the file states
 * @param whole    whether the numbers are written without decimal mark and exponent
 */
record Counts(Preamble preamble, boolean whole) {
    private static final double HALF_SCREEN = 5.5;

    /**
     * Whether written values look like counts.
     *
     * @param name     the channel's name
     * @param channel  its number among the channels, from 0
     * @param channels number of channels
     */
    boolean like(double[] written, String name, int channel, int channels) {
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        for (double value : written) {
            if (value != Math.rint(value) && !Double.isNaN(value)) {
                return false;
            }
            if (!Double.isNaN(value)) {
                least = Math.min(least, value);
                greatest = Math.max(greatest, value);
            }
        }
        double largest = Math.max(Math.abs(least), Math.abs(greatest));
        Optional<VerticalScale> scale = new VerticalFacts(preamble).of(name, channel, channels, least, greatest);
        double reach = scale.map(
                        s -> HALF_SCREEN * s.perDivision() + Math.abs(s.offset().orElse(0)))
                .orElse(whole ? 1 : Double.POSITIVE_INFINITY);
        return largest > reach;
    }
}
