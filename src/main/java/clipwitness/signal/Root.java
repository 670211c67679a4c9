package clipwitness.signal;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** The root of a function between two ends at which it has opposite signs, by Brent's method. */
public final class Root {
    private static final double RELATIVE = 1e-13;
    private static final double ABSOLUTE = 1e-15;
    private static final int MOST_STEPS = 500;

    private Root() {}

    /**
     * The root of a function that rises or falls through 0, to thirteen digits.
     *
     * @param function continuous between the ends
     * @param low      lower end
     * @param high     higher end
     * @return a place where it is 0; nothing where it has one sign at both ends, or no value at one
     */
    public static OptionalDouble between(DoubleUnaryOperator function, double low, double high) {
        double atLow = function.applyAsDouble(low);
        double atHigh = function.applyAsDouble(high);
        if (atLow == 0 || atHigh == 0) {
            return OptionalDouble.of(atLow == 0 ? low : high);
        }
        return Math.signum(atLow) * Math.signum(atHigh) < 0
                ? OptionalDouble.of(
                        new BrentSolver(RELATIVE, ABSOLUTE, 0).solve(MOST_STEPS, function::applyAsDouble, low, high))
                : OptionalDouble.empty();
    }
}
