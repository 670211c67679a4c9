package clipwitness.measure.clipper;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** The root of a rising function between two ends at which it has unlike signs, by Brent's method. */
final class Root {
    private static final double RELATIVE = 1e-13;
    private static final double ABSOLUTE = 1e-15;
    private static final int MOST_STEPS = 500;

    private Root() {}

    static double of(DoubleUnaryOperator function, double low, double high) {
        double atLow = function.applyAsDouble(low);
        if (atLow >= 0) {
            return low;
        }
        if (function.applyAsDouble(high) <= 0) {
            return high;
        }
        return new BrentSolver(RELATIVE, ABSOLUTE, 0).solve(MOST_STEPS, function::applyAsDouble, low, high);
    }
}
