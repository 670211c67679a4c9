package clipwitness.measure.transfer;

import clipwitness.signal.WeightedPoints;
import java.util.HashMap;
import java.util.Map;

/** Stretches of the upper side of a transfer curve, each worked out when it is first asked for, for all curves over the same inputs. */
final class Stretches {
    private final WeightedPoints points;
    private final double amplitude;
    private final CurveNoise noise;
    private final Map<Double, Ladder> known = new HashMap<>();
    private SlopePlaces places;
    private Averages averages;
    private Stretches mirrored;

    /**
     * Stretches.
     *
     * @param points    points of one of the curves
     * @param amplitude of the input, V
     * @param noise     of the curves
     */
    Stretches(WeightedPoints points, double amplitude, CurveNoise noise) {
        this.points = points;
        this.amplitude = amplitude;
        this.noise = noise;
    }

    /**
     * Places of a profile of slopes; the last ones are kept, because most curves ask for the same.
     *
     * @param innermost the first of them over the amplitude
     */
    SlopePlaces places(double innermost) {
        if (places == null || places.innermost() != innermost) {
            places = new SlopePlaces(this, innermost, amplitude);
        }
        return places;
    }

    /** The stretches around a middle, V. */
    Ladder at(double middle) {
        Ladder ladder = known.get(middle);
        if (ladder == null) {
            ladder = new Ladder(points, middle, amplitude, noise);
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
            mirrored = new Stretches(points.mirrored(), amplitude, noise);
            mirrored.mirrored = this;
        }
        return mirrored;
    }
}
