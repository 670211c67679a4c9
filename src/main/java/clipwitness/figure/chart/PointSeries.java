package clipwitness.figure.chart;

import clipwitness.figure.canvas.StateStyle;
import clipwitness.measure.Measured;
import java.util.List;

/**
 * Measured points of one state, rising along the x axis.
 *
 * @param style  state
 * @param hollow whether its markers are outlines only
 * @param joined whether a line joins them
 * @param points points, one or more
 */
public record PointSeries(StateStyle style, boolean hollow, boolean joined, List<Point> points) {
    /** Copies what it is given. */
    public PointSeries {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a series needs points");
        }
    }

    /** The points that are more than a bound. */
    List<Point> measured() {
        return points.stream().filter(p -> !p.upperBound()).toList();
    }

    /**
     * A measured point.
     *
     * @param x           in the unit of the x axis
     * @param y           in the unit of the y axis
     * @param uncertainty expanded, in the unit of the y axis
     * @param upperBound  whether the value does not exceed its uncertainty, so that only a bound is known
     */
    public record Point(double x, double y, double uncertainty, boolean upperBound) {
        /** A measured value at a place. */
        public static Point of(double x, Measured.Value value) {
            return new Point(x, value.number(), value.expanded(), value.isUpperBound());
        }

        /** What the mark covers: value - U to value + U, or the bound alone. */
        public Extent covered() {
            return upperBound
                    ? new Extent(y + uncertainty, y + uncertainty)
                    : new Extent(y - uncertainty, y + uncertainty);
        }
    }
}
