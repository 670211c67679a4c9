package clipwitness.figure.chart;

import java.awt.Color;
import java.awt.geom.Point2D;
import java.util.List;

/**
 * A line as it lies on the canvas.
 *
 * @param label  its name
 * @param color  its colour
 * @param points its corners
 */
record Trace(String label, Color color, List<Point2D> points) {
    /** Copies what it is given. */
    Trace {
        points = List.copyOf(points);
    }
}
