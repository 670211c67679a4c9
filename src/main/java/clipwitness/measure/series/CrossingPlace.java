package clipwitness.measure.series;

import clipwitness.signal.Crossing;
import clipwitness.signal.ShapePreservingInterpolation;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Where a curve through a few captured points first rises to a level, by shape-preserving interpolation. Between the points nothing is known: the error
 * of the place has a bound, the sum of the differences to the place on the straight chord and to the place found without the next-nearest
 * point; of two points alone, the distance to the farther one.
 *
 * @param at    the place
 * @param above index of the point above it, 1 or more
 * @param bound bound of the error, likewise in units of x
 */
public record CrossingPlace(double at, int above, double bound) {
    /**
     * The place.
     *
     * @param x     two abscissae or more, ascending
     * @param y     as many ordinates
     * @param level level, above the first ordinate
     * @return empty where no point reaches the level, or the first one does already
     */
    public static Optional<CrossingPlace> of(double[] x, double[] y, double level) {
        if (!(crossing(x, y, level) instanceof Crossing.At found)) {
            return Optional.empty();
        }
        double at = found.x();
        int above = 1;
        while (x[above] < at) {
            above++;
        }
        return Optional.of(new CrossingPlace(at, above, bound(x, y, level, at, above)));
    }

    private static Crossing crossing(double[] x, double[] y, double level) {
        return new ShapePreservingInterpolation(x, y).crossing(level);
    }

    private static double bound(double[] x, double[] y, double level, double at, int above) {
        if (x.length == 2) {
            return Math.max(at - x[0], x[1] - at);
        }
        double width = x[above] - x[above - 1];
        double chord = x[above - 1] + width * (level - y[above - 1]) / (y[above] - y[above - 1]);
        int next = nextNearest(x, at, above);
        return Math.abs(at - chord) + difference(at, crossing(without(x, next), without(y, next), level), width);
    }

    /** How far another place lies from this one; the width of the piece where there is none. */
    static double difference(double at, Crossing other, double width) {
        return other instanceof Crossing.At found ? Math.min(width, Math.abs(at - found.x())) : width;
    }

    private static int nextNearest(double[] x, double at, int above) {
        int next = above == 1 ? 2 : above - 2;
        if (above >= 2 && above + 1 < x.length && x[above + 1] - at < at - x[above - 2]) {
            next = above + 1;
        }
        return next;
    }

    private static double[] without(double[] values, int place) {
        return IntStream.range(0, values.length)
                .filter(i -> i != place)
                .mapToDouble(i -> values[i])
                .toArray();
    }
}
