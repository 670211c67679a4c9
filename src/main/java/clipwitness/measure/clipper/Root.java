package clipwitness.measure.clipper;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** The root of a rising function, by Brent's method. */
final class Root {
    private static final double RELATIVE = 1e-13;
    private static final double ABSOLUTE = 1e-15;
    private static final int MOST_STEPS = 500;

    private Root() {}

    /** The root between two ends; nothing where the function is above 0 at the lower or below 0 at the higher one. */
    static OptionalDouble of(DoubleUnaryOperator function, double low, double high) {
        double atLow = function.applyAsDouble(low);
        double atHigh = function.applyAsDouble(high);
        if (atLow == 0 || atHigh == 0) {
            return OptionalDouble.of(atLow == 0 ? low : high);
        }
        return atLow < 0 && atHigh > 0
                ? OptionalDouble.of(
                        new BrentSolver(RELATIVE, ABSOLUTE, 0).solve(MOST_STEPS, function::applyAsDouble, low, high))
                : OptionalDouble.empty();
    }

    /** The root of a function that is 0 or less at the lower end and, but for rounding, 0 or more at the higher one. */
    static double upTo(DoubleUnaryOperator function, double low, double high) {
        return of(function, low, high).orElse(high);
    }
}
