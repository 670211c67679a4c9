package clipwitness.capture;

import java.util.OptionalDouble;

/**
 * What a file says about a channel's vertical range, in the channel's unit.
 *
 * @param perDivision volts or amperes a division, above 0
 * @param offset      value at the centre of the screen, or empty where the file does not say
 * @param fullScale   distance from the centre at which the converter ends, above 0, or empty where the file does not say
 */
public record VerticalScale(double perDivision, OptionalDouble offset, OptionalDouble fullScale) {
    /** Divisions of a screen on either side of its centre. */
    private static final int DIVISIONS = 4;

    /** Checks that the scale is above 0. */
    public VerticalScale {
        if (!(perDivision > 0 && perDivision < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("perDivision must be finite and above 0 but is " + perDivision);
        }
    }

    /** A scale whose converter is not stated. */
    public VerticalScale(double perDivision, OptionalDouble offset) {
        this(perDivision, offset, OptionalDouble.empty());
    }

    /** The scale of a sound file, whose values end at full scale on either side of 0. */
    public static VerticalScale ofFullScale(double fullScale) {
        return new VerticalScale(fullScale / DIVISIONS, OptionalDouble.of(0), OptionalDouble.of(fullScale));
    }

    /** The scale of the same channel times a factor above 0: that of its probe, for instance. */
    public VerticalScale times(double factor) {
        return new VerticalScale(perDivision * factor, times(offset, factor), times(fullScale, factor));
    }

    private static OptionalDouble times(OptionalDouble value, double factor) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * factor) : value;
    }
}
