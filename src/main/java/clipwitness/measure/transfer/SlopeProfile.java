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
    private static final int PLACES = SlopePlaces.COUNT;
    private static final int HALVINGS = 6;

    private final Transfer transfer;
    private final double wanted;
    private final double widening;
    private final SlopePlaces places;
    private final int[] steps;
    private final double[] slopes = new double[PLACES];

    private SlopeProfile(Transfer transfer, double wanted, double widening, SlopePlaces places, int[] steps) {
        this.transfer = transfer;
        this.wanted = wanted;
        this.widening = widening;
        this.places = places;
        this.steps = steps;
        for (int i = 0; i < PLACES; i++) {
            slopes[i] = places.ladder(i).widened(steps[i], widening).slopeOf(transfer.points());
        }
    }

    /**
     * The slopes of a curve.
     *
     * @param onset the smaller onset of the curve, or its end, V
     */
    static SlopeProfile of(Transfer transfer, double smallSignalSlope, double onset) {
        double innermost = Math.min(INNERMOST, SHARE_OF_ONSET * onset / transfer.amplitude());
        SlopePlaces places = transfer.stretches().places(innermost);
        double wanted = WELL_KNOWN * smallSignalSlope;
        int[] steps = new int[PLACES];
        for (int i = 0; i < PLACES; i++) {
            steps[i] = places.ladder(i).step(wanted);
        }
        return new SlopeProfile(transfer, wanted, 1, places, steps);
    }

    /** The slopes over stretches that are wider by a factor. */
    SlopeProfile widened(double factor) {
        return new SlopeProfile(transfer, wanted, factor, places, steps);
    }

    private double slopeAt(double input) {
        Ladder ladder = transfer.stretches().at(input);
        return ladder.widened(ladder.step(wanted), widening).slopeOf(transfer.points());
    }

    /** Standard uncertainty of a slope. */
    private double uncertainty(int place) {
        return places.ladder(place).narrow(steps[place]).uncertainty();
    }

    /** Slope at the input's peak. */
    double last() {
        return slopes[PLACES - 1];
    }

    /**
     * Where the slope falls to a level.
     *
     * @param first place before the first time
     * @param last  place before the last time
     * @param from  input at the first time, V
     * @param to    input at the last time, V
     */
    record Passage(int first, int last, double from, double to) {
        /** The middle between first and last time, V. */
        double middle() {
            return Math.sqrt(from * to);
        }

        /** Distance of the first and the last time, dB. */
        double ambiguity() {
            return first == last ? 0 : Decibels.ofAmplitude(to / from);
        }
    }

    /** Where the slope falls to a level. */
    Passage passage(double level) {
        int first = first(level);
        int last = last(level);
        double from = refined(first, level);
        return new Passage(first, last, from, first == last ? from : refined(last, level));
    }

    /**
     * Standard uncertainty of a passage over its value, 1 at most.
     *
     * @param ofLast how far the level moves with the slope at the peak, as a share
     */
    double relativeUncertainty(Passage passage, double ofLast) {
        int low = Math.max(0, Math.min(passage.first, passage.last) - 2);
        int high = Math.min(PLACES - 1, Math.max(passage.first, passage.last) + 3);
        double perLogarithm = (slopes[low] - slopes[high]) / Math.log(places.input(high) / places.input(low));
        double both = Math.hypot(uncertainty(passage.last), ofLast * uncertainty(PLACES - 1));
        return perLogarithm > 0 ? Math.min(1, both / perLogarithm) : 1;
    }

    /** Whether enough samples lie between the middle and twice the place of a passage. */
    boolean resolves(Passage passage) {
        return transfer.points().holds(FEWEST_POINTS, 0, 2 * places.input(passage.first));
    }

    /**
     * How far curvature may move a passage, over its place. A parabola by least squares over half a width r misses y''' r² / 10 of the slope; where the
     * slope bends over its own distance x, y''' = 2 y'' / x, that moves the crossing by (r / x)² / 5.
     */
    double curved(Passage passage) {
        double reach = Ladder.reach(steps[passage.last], transfer.amplitude());
        double share = reach * widening / places.input(passage.last);
        return share * share / 5;
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
        double low = places.input(place);
        double high = places.input(place + 1);
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
