package clipwitness.compare.judge;

import clipwitness.compare.result.Decision;
import clipwitness.measure.Budget;
import clipwitness.measure.Measured;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.special.Erf;

/**
 * A tolerance interval and the decision rule on it: guard bands as wide as the expanded uncertainty (JCGM 106:2012, 8.3;
 * ILAC-G8:09/2019, 4.2.3). The value is distributed normally, or as Student's t where its uncertainty has finite degrees of freedom. Pass when [y - U, y + U] lies inside, fail when it lies outside, undecided between.
 *
 * @param lower lower limit, negative infinity where there is none
 * @param upper upper limit, positive infinity where there is none
 */
public record Tolerance(double lower, double upper) {
    /** Checks that the limits rise. */
    public Tolerance {
        if (!(lower <= upper)) { // NaN lands here too
            throw new IllegalArgumentException("limits must rise but are " + lower + " and " + upper);
        }
    }

    /** Within plus or minus a limit. */
    public static Tolerance within(double limit) {
        return new Tolerance(-limit, limit);
    }

    /** At most a limit. */
    public static Tolerance atMost(double limit) {
        return new Tolerance(Double.NEGATIVE_INFINITY, limit);
    }

    /** Decision on a value. Of an upper bound nothing is known from below, so it cannot fail. */
    public Decision decide(Measured.Value value) {
        double y = value.number();
        double expanded = value.expanded();
        if (y + expanded <= upper && y - expanded >= lower) {
            return Decision.PASS;
        }
        boolean outside = y - expanded > upper || y + expanded < lower;
        return outside && !value.isUpperBound() ? Decision.FAIL : Decision.UNDECIDED;
    }

    /** Probability that the true value lies inside (JCGM 106:2012, 7.3 and 7.4; JCGM 101:2008, 6.4.9, for finite degrees of freedom). */
    public double conformanceProbability(Measured.Value value) {
        double u = value.standardUncertainty();
        double freedom = Budget.degreesOfFreedom(value.budget());
        return below(upper - value.number(), u, freedom) - below(lower - value.number(), u, freedom);
    }

    /** Distance of a value from the nearer limit, 0 or more. */
    public double distance(double value) {
        return Math.min(Math.abs(value - lower), Math.abs(upper - value));
    }

    private static double below(double distance, double u, double freedom) {
        if (Double.isInfinite(distance) || u == 0) {
            return distance >= 0 ? 1 : 0;
        }
        return Double.isInfinite(freedom)
                ? 0.5 * Erf.erfc(-distance / (u * Math.sqrt(2)))
                : new TDistribution(null, freedom).cumulativeProbability(distance / u);
    }
}
