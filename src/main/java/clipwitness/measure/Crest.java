package clipwitness.measure;

import clipwitness.signal.PolynomialFit;
import clipwitness.signal.WeightedPoints;

/**
 * Height of an arc from two polynomials, each through half of the points. Each one's value where the other is highest is unbiased on a
 * plateau and a little low on a round crest; its value where it is highest itself is high on both. The height stands a quarter of
 * the way from the first to the second, and the quarter counts as uncertainty of the method.
 */
final class Crest {
    private static final int PLACES = 64;
    private static final double SHARE = 0.25;

    private final double place;
    private final double height;
    private final double relativeUncertainty;
    private final double methodUncertainty;

    /**
     * Looks for the crest of an arc.
     *
     * @param degree of both polynomials
     * @param sign   1 for an upper crest, -1 for a lower one
     */
    Crest(WeightedPoints arc, int degree, int sign) {
        PolynomialFit first = new PolynomialFit(arc.half(0), degree);
        PolynomialFit second = new PolynomialFit(arc.half(1), degree);
        double low = arc.x(0);
        double high = arc.x(arc.size() - 1);
        double ofFirst = highest(first, low, high, sign);
        double ofSecond = highest(second, low, high, sign);
        double crossed = (first.at(ofSecond) + second.at(ofFirst)) / 2;
        double own = (first.at(ofFirst) + second.at(ofSecond)) / 2;
        place = (ofFirst + ofSecond) / 2;
        height = crossed + SHARE * (own - crossed);
        methodUncertainty = SHARE * Math.abs(own - crossed);
        relativeUncertainty = Math.sqrt(first.varianceAt(ofSecond) + second.varianceAt(ofFirst)) / 2;
    }

    private static double highest(PolynomialFit fit, double low, double high, int sign) {
        double best = low;
        for (int i = 1; i <= PLACES; i++) {
            double at = low + (high - low) * i / PLACES;
            best = sign * fit.at(at) > sign * fit.at(best) ? at : best;
        }
        return best;
    }

    /** Where the crest is highest. */
    double place() {
        return place;
    }

    /** How high it is. */
    double height() {
        return height;
    }

    /** Standard uncertainty of the height for samples of unit scatter. */
    double relativeUncertainty() {
        return relativeUncertainty;
    }

    /** Standard uncertainty of the method. */
    double methodUncertainty() {
        return methodUncertainty;
    }
}
