package clipwitness.capture;

import java.util.OptionalDouble;

/**
 * What a preamble says about a channel's vertical range, in the channel's unit.
 *
 * @param perDivision volts or amperes a division, above 0
 * @param offset      value at the centre of the screen, or empty where the file does not say
 */
public record VerticalScale(double perDivision, OptionalDouble offset) {
    /** Checks that the scale is above 0. */
    public VerticalScale {
        if (!(perDivision > 0 && perDivision < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("perDivision must be finite and above 0 but is " + perDivision);
        }
    }

    /** The scale of the same channel times a factor above 0: that of its probe, for instance. */
    public VerticalScale times(double factor) {
        return new VerticalScale(
                perDivision * factor,
                offset.isPresent() ? OptionalDouble.of(offset.getAsDouble() * factor) : OptionalDouble.empty());
    }
}
