package clipwitness.measure.junction;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The fits of a curve with and without shunt, and which of them stands: the one with the smaller Bayesian information criterion (G. Schwarz,
 * Estimating the dimension of a model, Ann. Statist. 6 (1978) 461-464), chi-square + p ln n, of the forward points by their voltage and of the reverse
 * points, down to the floor, by their current. Chi-square is in units of what the better fit leaves, and n counts neighbours whose residuals
 * are alike as fewer. The other fit keeps a weight, exp(-d / 2) against 1, d the difference of the criteria.
 *
 * @param stands fit that stands
 * @param other  the other, where it settled
 * @param weight weight of the other, 0 to one half
 */
record ShuntChoice(FitAttempt stands, Optional<FitAttempt> other, double weight) {
    private static final double SMALLEST_SHARE = 1e-6;

    /**
     * Chooses.
     *
     * @param plain   fit without shunt
     * @param shunted fit with shunt
     * @param forward forward points above the floor
     * @param reverse reverse points, those in the floor too
     */
    static ShuntChoice of(FitAttempt plain, FitAttempt shunted, List<TracedPoint> forward, List<TracedPoint> reverse) {
        double without = plain.chiSquare(forward) + plain.passive().chiSquareOfCurrents(reverse);
        double with = shunted.chiSquare(forward) + shunted.passive().chiSquareOfCurrents(reverse);
        int points = forward.size() + reverse.size();
        double alike = Math.max(plain.alikeness(), shunted.alikeness());
        double scatter = Math.max(1, Math.min(without, with) / (points - ModelRegression.SHUNT - 1));
        double independent = Math.max(Math.E, points / (alike * alike));
        double gain = (without - with) / (scatter * alike * alike) - Math.log(independent);
        double weight = 1 / (1 + Math.exp(Math.abs(gain) / 2));
        double kept = weight < SMALLEST_SHARE ? 0 : weight;
        return gain > 0
                ? new ShuntChoice(shunted, Optional.of(plain), kept)
                : new ShuntChoice(plain, Optional.of(shunted), kept);
    }

    /** The one fit that settled. */
    static ShuntChoice only(FitAttempt attempt) {
        return new ShuntChoice(attempt, Optional.empty(), 0);
    }

    /** The same with models whose series resistances are 0 where the fits gave less. */
    ShuntChoice passive() {
        return new ShuntChoice(stands.passive(), other.map(FitAttempt::passive), weight);
    }

    /** What the choice puts on a figure, standard, in its unit: the distance to the other fit's figure times the root of its weight. */
    double uncertainty(ToDoubleFunction<JunctionModel> figure) {
        return other.map(o -> Math.sqrt(weight)
                        * Math.abs(figure.applyAsDouble(o.model()) - figure.applyAsDouble(stands.model())))
                .orElse(0.0);
    }
}
