package clipwitness.measure.transfer;

import clipwitness.signal.WeightedPoints;

/** Stretches around one place of a transfer curve, each half as wide again as the one before. */
final class Ladder {
    private static final double NARROWEST = 0.004;
    private static final double WIDEST = 0.2;
    private static final double WIDER = 1.5;
    private static final int MOST = 12; // 0.004 times 1.5 to the 10th exceeds 0.2

    private final WeightedPoints points;
    private final double middle;
    private final double amplitude;
    private final CurveNoise noise;
    private final Stretch[] narrow = new Stretch[MOST];
    private final Stretch[] wide = new Stretch[MOST];

    /**
     * Stretches around a place.
     *
     * @param points    points of one of the curves over the same inputs
     * @param middle    the place, V
     * @param amplitude of the input, V
     * @param noise     of the curves
     */
    Ladder(WeightedPoints points, double middle, double amplitude, CurveNoise noise) {
        this.points = points;
        this.middle = middle;
        this.amplitude = amplitude;
        this.noise = noise;
    }

    /**
     * Step of the first stretch over which the slope is known well enough, the last one at most.
     *
     * @param wanted largest standard uncertainty of the slope
     */
    int step(double wanted) {
        int step = 0;
        double reach = NARROWEST * amplitude;
        while (reach < WIDEST * amplitude && !stretch(narrow, step, reach).tells(wanted)) {
            reach *= WIDER;
            step++;
        }
        return step;
    }

    /** From the place to the ends of a stretch, V. */
    static double reach(int step, double amplitude) {
        double reach = NARROWEST * amplitude;
        for (int i = 0; i < step; i++) {
            reach *= WIDER;
        }
        return reach;
    }

    /** The stretch of a step. */
    Stretch narrow(int step) {
        return stretch(narrow, step, reach(step, amplitude));
    }

    /** The stretch of a step, its reach times a factor that is always the same. */
    Stretch widened(int step, double widening) {
        return widening == 1 ? narrow(step) : stretch(wide, step, reach(step, amplitude) * widening);
    }

    private Stretch stretch(Stretch[] known, int step, double reach) {
        if (known[step] == null) {
            known[step] = new Stretch(points, middle, reach, noise);
        }
        return known[step];
    }
}
