package clipwitness.measure.noise;

/**
 * A band of frequencies.
 *
 * @param low  lower end in Hz, 0 or more
 * @param high upper end in Hz, above the lower
 */
public record Band(double low, double high) {
    /** Checks that the band has a width. */
    public Band {
        if (!(low >= 0 && high > low && high < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a band needs 0 <= low < high but has " + low + " and " + high);
        }
    }

    /** What both bands have in common; they must overlap. */
    public Band and(Band other) {
        return new Band(Math.max(low, other.low), Math.min(high, other.high));
    }

    /** How much of a bin about a frequency lies in the band, 0 to 1; a line, of no width, lies in it or not. */
    double share(double centre, double width) {
        if (width == 0) {
            return centre >= low && centre <= high ? 1 : 0;
        }
        double inside = Math.min(high, centre + width / 2) - Math.max(low, centre - width / 2);
        return Math.max(0, Math.min(1, inside / width));
    }
}
