package clipwitness.measure.transfer;

import clipwitness.quantity.Decibels;

/**
 * Slope of the upper side of a transfer curve, from parabolas over stretches that are just wide enough for the slope to be known to 3 % of
 * the small-signal slope, at places from 2 % of the input's amplitude, or a third of the onset where that is less, up to its peak.
 */
final class SlopeProfile {
    private static final double WELL_KNOWN = 0.03;
    private static final double INNERMOST = 0.02;
    private static final double SHARE_OF_ONSET = 1.0 / 3;
    private static final int FEWEST_POINTS = 12;
    private static final int PLACES = 64;
    private static final int HALVINGS = 6;

    private final Transfer transfer;
    private final double wanted;
    private final double widening;
    private final double[] places = new double[PLACES];
    private final double[] slopes = new double[PLACES];

    /**
     * @param onset    the smaller onset of the curve, or its end, V
     * @param widening factor on the width of each stretch
     */
    SlopeProfile(Transfer transfer, double smallSignalSlope, double onset, double widening) {
        this.transfer = transfer;
        this.wanted = WELL_KNOWN * smallSignalSlope;
        this.widening = widening;
        double innermost = Math.min(INNERMOST, SHARE_OF_ONSET * onset / transfer.amplitude());
        for (int i = 0; i < PLACES; i++) {
            places[i] = transfer.amplitude() * Math.pow(innermost, 1 - i / (PLACES - 1.0));
            slopes[i] = slopeAt(places[i]);
        }
    }

    private double slopeAt(double input) {
        Ladder ladder = transfer.stretches().at(input);
        return ladder.widened(step(ladder), widening).slopeOf(transfer.points());
    }

    private int step(Ladder ladder) {
        return ladder.step(transfer.scatter(), transfer.undithered(), wanted);
    }

    /** Standard uncertainty of a slope. */
    private double uncertainty(double input) {
        Ladder ladder = transfer.stretches().at(input);
        return ladder.narrow(step(ladder)).uncertainty(transfer.scatter(), transfer.undithered());
    }

    /** Slope at the input's peak. */
    double last() {
        return slopes[PLACES - 1];
    }

    /** Input where the slope falls to a level, the middle between first and last time, V. */
    double crossing(double level) {
        int first = first(level);
        int last = last(level);
        double beginning = refined(first, level);
        return Math.sqrt(beginning * (first == last ? beginning : refined(last, level)));
    }

    /**
     * Standard uncertainty of that over its value, 1 at most.
     *
     * @param ofLast how far the level moves with the slope at the peak, as a share
     */
    double relativeUncertainty(double level, double ofLast) {
        int low = Math.max(0, Math.min(first(level), last(level)) - 2);
        int high = Math.min(PLACES - 1, Math.max(first(level), last(level)) + 3);
        double perLogarithm = (slopes[low] - slopes[high]) / Math.log(places[high] / places[low]);
        double place = places[last(level)];
        double peak = places[PLACES - 1];
        double both = Math.hypot(uncertainty(place), ofLast * uncertainty(peak));
        return perLogarithm > 0 ? Math.min(1, both / perLogarithm) : 1;
    }

    /** Whether enough samples lie between the middle and twice the place of a level. */
    boolean resolves(double level) {
        return transfer.points().holds(FEWEST_POINTS, 0, 2 * places[first(level)]);
    }

    /**
     * How far curvature may move a crossing, over its place. A parabola by least squares over half a width r misses y''' r² / 10 of the slope; where the
     * slope bends over its own distance x, y''' = 2 y'' / x, that moves the crossing by (r / x)² / 5.
     */
    double curved(double level) {
        double place = places[last(level)];
        double reach = Ladder.reach(step(transfer.stretches().at(place)), transfer.amplitude());
        double share = reach * widening / place;
        return share * share / 5;
    }

    /** Distance of the first and the last crossing of a level, dB. */
    double ambiguity(double level) {
        int first = first(level);
        int last = last(level);
        return first == last ? 0 : Decibels.ofAmplitude(refined(last, level) / refined(first, level));
    }

    private int first(double level) {
        int i = 0;
        while (i < PLACES - 2 && slopes[i + 1] > level) {
            i++;
        }
        return i;
    }

    private int last(double level) {
        int i = PLACES - 2;
        while (i > 0 && slopes[i] < level) {
            i--;
        }
        return i;
    }

    /**
     * Halves the stretch from one place to the next until the crossing is known to a thousandth. Not for a solver of roots: the width of the
     * parabola changes in steps from place to place, and the slope with it.
     */
    private double refined(int place, double level) {
        double low = places[place];
        double high = places[place + 1];
        for (int i = 0; i < HALVINGS; i++) {
            double middle = Math.sqrt(low * high);
            if (slopeAt(middle) > level) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.sqrt(low * high);
    }
}
