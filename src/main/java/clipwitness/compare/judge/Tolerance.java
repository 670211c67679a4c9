package clipwitness.compare.judge;

import clipwitness.compare.result.Decision;
import clipwitness.measure.Measured;
import org.apache.commons.math3.special.Erf;

/**
 * A tolerance interval and the decision rule on it: guard bands as wide as the expanded uncertainty (JCGM 106:2012, 8.3;
 * ILAC-G8:09/2019, 4.2.3), normal distribution. Pass when [y - U, y + U] lies inside, fail when it lies outside, undecided between.
 *
 * @param lower lower limit, negative infinity where there is none
 * @param upper upper limit, positive infinity where there is none
 */
record Tolerance(double lower, double upper) {
    Tolerance {
        if (!(lower <= upper)) { // NaN lands here too
            throw new IllegalArgumentException("limits must rise but are " + lower + " and " + upper);
        }
    }

    /** Within plus or minus a limit. */
    static Tolerance within(double limit) {
        return new Tolerance(-limit, limit);
    }

    /** At most a limit. */
    static Tolerance atMost(double limit) {
        return new Tolerance(Double.NEGATIVE_INFINITY, limit);
    }

    /** Decision on a value. Of an upper bound nothing is known from below, so it cannot fail. */
    Decision decide(Measured.Value value) {
        double y = value.number();
        double expanded = value.expanded();
        if (y + expanded <= upper && y - expanded >= lower) {
            return Decision.PASS;
        }
        boolean outside = y - expanded > upper || y + expanded < lower;
        return outside && !value.isUpperBound() ? Decision.FAIL : Decision.UNDECIDED;
    }

    /** Probability that the true value lies inside (JCGM 106:2012, 7.3 and 7.4). */
    double conformanceProbability(Measured.Value value) {
        double u = value.standardUncertainty();
        return normal(upper - value.number(), u) - normal(lower - value.number(), u);
    }

    /** Distance of a value from the nearer limit, 0 or more. */
    double distance(double value) {
        return Math.min(Math.abs(value - lower), Math.abs(upper - value));
    }

    private static double normal(double distance, double u) {
        if (Double.isInfinite(distance) || u == 0) {
            return distance >= 0 ? 1 : 0;
        }
        return 0.5 * Erf.erfc(-distance / (u * Math.sqrt(2)));
    }
}
