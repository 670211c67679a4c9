package clipwitness.measure.transfer;

import clipwitness.signal.PolynomialFit;
import clipwitness.signal.Root;
import clipwitness.signal.WeightedPoints;

/**
 * A polynomial through the samples near a place of the upper side of a transfer curve. Where too few lie around the place, those further out are taken
 * instead of those further in: a sharp corner lies 11 % inside its onset, and a polynomial across it follows neither side.
 *
 * @param place    its place, as an input in V
 * @param parabola through the stretch
 * @param sparse   whether so few samples lie near the place that the stretch rests on the curve's form
 */
record OuterStretch(double place, PolynomialFit parabola, boolean sparse) {
    static final double REACH = 0.08;
    private static final double REACH_OF_AVERAGE = 0.05;
    private static final double WIDER = 1.08;
    private static final double NARROWER = 0.8;
    private static final int ENOUGH = 12;
    private static final int FEWEST = 5;
    private static final int ENOUGH_FOR_AVERAGE = 8;
    private static final int FEWEST_FOR_AVERAGE = 4;

    /** Far enough out for a parabola. */
    private static final double NEAR = 1.5;

    /** Standard deviations of chi-squared by which the residuals may exceed the noise. */
    private static final double SELDOM = 1;

    /**
     * The parabola over 8 % to both sides, narrowed until it follows the curve. Where fewer than 12 places there have a sample, over 8 % inwards and
     * as far outwards as 12 places need; that is narrowed, down to 5 places, until it follows the curve.
     *
     * @param scatter standard deviation of one sample
     */
    static OuterStretch of(WeightedPoints points, double place, double scatter) {
        double low = place * (1 - REACH);
        double high = place * (1 + REACH);
        if (points.holds(ENOUGH, low, high)) {
            return new OuterStretch(place, PolynomialFit.around(points, place, REACH * place, 2, scatter), false);
        }
        boolean sparse = !points.holds(ENOUGH_FOR_AVERAGE, low, NEAR * place);
        double reach = !points.holds(FEWEST, low, NEAR * place)
                ? high(points, low, NEAR * place, FEWEST) - place
                : Math.min(high(points, low, high, ENOUGH), NEAR * place) - place;
        double from = low(points, low, place, FEWEST);
        while (true) {
            PolynomialFit fit = PolynomialFit.between(points, from, place + reach, 2);
            reach *= NARROWER;
            boolean narrowest = reach < REACH * place || !points.holds(FEWEST, from, place + reach);
            if (narrowest || fit.fits(scatter, SELDOM)) {
                return new OuterStretch(place, fit, sparse);
            }
        }
    }

    /** Whether the output is short of a lowered line along all of the neighbourhood. */
    boolean liesBeyond(SmallSignalLine line) {
        return excess(line, place * (1 - REACH)) <= 0;
    }

    /** Where the parabola crosses a lowered line, near the place; the place itself where it does not. */
    double crossing(SmallSignalLine line) {
        double low = place * (1 - REACH);
        return liesBeyond(line)
                ? place
                : Root.between(x -> excess(line, x), low, place * (1 + REACH)).orElse(place);
    }

    private double excess(SmallSignalLine line, double input) {
        return parabola.at(input) - line.lowered(input);
    }

    /** A line through the samples up to 5 % away from a place. */
    static PolynomialFit averaging(WeightedPoints points, double place) {
        double low = place * (1 - REACH_OF_AVERAGE);
        double high = place * (1 + REACH_OF_AVERAGE);
        boolean enough = points.holds(ENOUGH_FOR_AVERAGE, low, high);
        return enough
                ? PolynomialFit.between(points, low, high, 1)
                : PolynomialFit.between(
                        points,
                        low(points, low, place, FEWEST_FOR_AVERAGE),
                        high(points, low, high, FEWEST_FOR_AVERAGE),
                        1);
    }

    private static double high(WeightedPoints points, double low, double high, int fewest) {
        double last = points.x(points.size() - 1);
        double wider = high;
        while (wider < last && !points.holds(fewest, low, wider)) {
            wider *= WIDER;
        }
        return wider;
    }

    /** Near the end of the curve there is nothing further out. */
    private static double low(WeightedPoints points, double low, double place, int fewest) {
        double wider = low;
        while (!points.holds(fewest, wider, Double.POSITIVE_INFINITY)) {
            wider -= REACH * place;
        }
        return wider;
    }
}
