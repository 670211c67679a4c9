package clipwitness.measure.clipper;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/** Where a function of one positive number is least, looked for over its logarithm: even places first, then Brent's method about the best. */
final class LogSearch {
    private static final int PLACES = 48;
    private static final int MOST_EVALUATIONS = 200;
    private static final double RELATIVE = 1e-7;
    private static final double ABSOLUTE = 1e-9;

    private LogSearch() {}

    /** The number between two bounds, both above 0, at which the function is least. */
    static double least(DoubleUnaryOperator function, double low, double high) {
        double from = Math.log(low);
        double step = (Math.log(high) - from) / PLACES;
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= PLACES; i++) {
            double value = function.applyAsDouble(Math.exp(from + i * step));
            if (value < least) {
                least = value;
                best = i;
            }
        }
        return Math.exp(new BrentOptimizer(RELATIVE, ABSOLUTE)
                .optimize(
                        new MaxEval(MOST_EVALUATIONS),
                        GoalType.MINIMIZE,
                        new UnivariateObjectiveFunction(x -> function.applyAsDouble(Math.exp(x))),
                        new SearchInterval(
                                from + Math.max(0, best - 1) * step, from + Math.min(PLACES, best + 1) * step))
                .getPoint());
    }
}
