package clipwitness.measure;

import java.util.Objects;

/**
 * One contribution to the uncertainty of a value.
 *
 * @param source              where it comes from; contributions of one source to one value rest on one estimate
 * @param standardUncertainty in the unit of the value, 0 or more
 * @param degreesOfFreedom    of that estimate, above 0; infinite where it is as good as known
 */
public record Contribution(Source source, double standardUncertainty, double degreesOfFreedom) {
    /** Checks that the uncertainty is finite and not negative. */
    public Contribution {
        Objects.requireNonNull(source, "source");
        if (!(standardUncertainty >= 0 && standardUncertainty < Double.POSITIVE_INFINITY)) { // NaN lands here too
            throw new IllegalArgumentException(
                    "standardUncertainty must be finite and 0 or more but is " + standardUncertainty);
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("degreesOfFreedom must be above 0 but is " + degreesOfFreedom);
        }
    }

    /** A contribution that is as good as known: infinitely many degrees of freedom. */
    public Contribution(Source source, double standardUncertainty) {
        this(source, standardUncertainty, Double.POSITIVE_INFINITY);
    }

    /** The same contribution to a figure that moves so much, positive, for a unit of this one. */
    public Contribution times(double sensitivity) {
        return new Contribution(source, standardUncertainty * sensitivity, degreesOfFreedom);
    }

    /** Variance, the square of the standard uncertainty. */
    public double variance() {
        return standardUncertainty * standardUncertainty;
    }
}
