package clipwitness.measure.transfer;

import clipwitness.signal.WeightedPoints;
import java.util.HashMap;
import java.util.Map;

/** Stretches of the upper side of a transfer curve, each worked out when it is first asked for, for all curves over the same inputs. */
final class Stretches {
    private final WeightedPoints points;
    private final Map<Double, Map<Double, Stretch>> known = new HashMap<>();
    private Stretches mirrored;

    /**
     * Stretches.
     *
     * @param points points of one of the curves
     */
    Stretches(WeightedPoints points) {
        this.points = points;
    }

    /** The stretch around a middle with a reach to both sides, V. */
    Stretch at(double middle, double reach) {
        return known.computeIfAbsent(middle, m -> new HashMap<>())
                .computeIfAbsent(reach, r -> new Stretch(points, middle, reach));
    }

    /** The stretches of the curve seen from the other end. */
    Stretches mirrored() {
        if (mirrored == null) {
            mirrored = new Stretches(points.mirrored());
            mirrored.mirrored = this;
        }
        return mirrored;
    }
}
