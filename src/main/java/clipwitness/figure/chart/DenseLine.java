package clipwitness.figure.chart;

import clipwitness.figure.canvas.Box;
import java.awt.Color;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/** A line as points so near to each other that what lies between two of them touches nothing that the points do not. */
final class DenseLine {
    private static final double SPACING = 2;

    private final String label;
    private final Color color;
    private final double[] xs;
    private final double[] ys;

    private DenseLine(String label, Color color, List<Point2D> points) {
        this.label = label;
        this.color = color;
        this.xs = points.stream().mapToDouble(Point2D::getX).toArray();
        this.ys = points.stream().mapToDouble(Point2D::getY).toArray();
    }

    /** The points of a line and so many between them that none is farther than two points from the next. */
    static DenseLine of(Trace trace) {
        List<Point2D> points = new ArrayList<>();
        Point2D last = null;
        for (Point2D p : trace.points()) {
            int steps = last == null ? 1 : (int) Math.max(1, Math.ceil(last.distance(p) / SPACING));
            for (int i = 1; i <= steps; i++) {
                points.add(last == null ? p : between(last, p, (double) i / steps));
            }
            last = p;
        }
        return new DenseLine(trace.label(), trace.color(), points);
    }

    private static Point2D between(Point2D a, Point2D b, double share) {
        return new Point2D.Double(a.getX() + share * (b.getX() - a.getX()), a.getY() + share * (b.getY() - a.getY()));
    }

    String label() {
        return label;
    }

    Color color() {
        return color;
    }

    /** Number of points. */
    int size() {
        return xs.length;
    }

    double x(int point) {
        return xs[point];
    }

    double y(int point) {
        return ys[point];
    }

    /** Whether every point is at least so far from a rectangle. */
    boolean isApart(Box box, double least) {
        double left = box.x() - least;
        double right = box.right() + least;
        for (int i = 0; i < xs.length; i++) {
            if (xs[i] > left && xs[i] < right && box.isWithin(least, xs[i], ys[i])) { // few lie above or below
                return false;
            }
        }
        return true;
    }
}
