package clipwitness.measure;

import java.util.Objects;

/**
 * One contribution to the uncertainty of a value.
 *
 * @param source              where it comes from
 * @param standardUncertainty in the unit of the value, 0 or more
 */
public record Contribution(Source source, double standardUncertainty) {
    /** Checks that the uncertainty is finite and not negative. */
    public Contribution {
        Objects.requireNonNull(source, "source");
        if (!(standardUncertainty >= 0 && standardUncertainty < Double.POSITIVE_INFINITY)) { // NaN lands here too
            throw new IllegalArgumentException(
                    "standardUncertainty must be finite and 0 or more but is " + standardUncertainty);
        }
    }
}
