package clipwitness.measure.transfer;

import clipwitness.signal.WeightedPoints;
import java.util.HashMap;
import java.util.Map;

/** Stretches of the upper side of a transfer curve, each worked out when it is first asked for, for all curves over the same inputs. */
final class Stretches {
    private final WeightedPoints points;
    private final double amplitude;
    private final Map<Double, Ladder> known = new HashMap<>();
    private Averages averages;
    private Stretches mirrored;

    /**
     * Stretches.
     *
     * @param points    points of one of the curves
     * @param amplitude of the input, V
     */
    Stretches(WeightedPoints points, double amplitude) {
        this.points = points;
        this.amplitude = amplitude;
    }

    /** The stretches around a middle, V. */
    Ladder at(double middle) {
        Ladder ladder = known.get(middle);
        if (ladder == null) {
            ladder = new Ladder(points, middle, amplitude);
            known.put(middle, ladder);
        }
        return ladder;
    }

    /** Averages over short stretches. */
    Averages averages() {
        if (averages == null) {
            averages = new Averages(points, amplitude);
        }
        return averages;
    }

    /** The stretches of the curve seen from the other end. */
    Stretches mirrored() {
        if (mirrored == null) {
            mirrored = new Stretches(points.mirrored(), amplitude);
            mirrored.mirrored = this;
        }
        return mirrored;
    }
}
