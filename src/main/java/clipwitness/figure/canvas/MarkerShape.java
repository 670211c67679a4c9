package clipwitness.figure.canvas;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;

/** What marks a point of a state, besides its colour. */
public enum MarkerShape {
    /** A disc. */
    CIRCLE(0, 0, 1),
    /** A square on its side. */
    SQUARE(4, 45, 1.2),
    /** A triangle, point up. */
    TRIANGLE(3, 0, 1.3),
    /** A square on its corner. */
    DIAMOND(4, 0, 1.3),
    /** A triangle, point down. */
    TRIANGLE_DOWN(3, 180, 1.3),
    /** A hexagon. */
    HEXAGON(6, 0, 1.1);

    private final int corners;
    private final double degrees;
    private final double growth;

    MarkerShape(int corners, double degrees, double growth) {
        this.corners = corners;
        this.degrees = degrees;
        this.growth = growth;
    }

    /**
     * The outline about a point.
     *
     * @param size diameter of the disc that looks as large, points
     */
    Shape at(double x, double y, double size) {
        double radius = size / 2 * growth;
        if (corners == 0) {
            return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
        }
        Path2D path = new Path2D.Double();
        for (int i = 0; i < corners; i++) {
            double turn = Math.toRadians(degrees + 360.0 * i / corners);
            double cx = x + radius * Math.sin(turn);
            double cy = y - radius * Math.cos(turn);
            if (i == 0) {
                path.moveTo(cx, cy);
            } else {
                path.lineTo(cx, cy);
            }
        }
        path.closePath();
        return path;
    }

    /** Paints a filled marker, or one that is only an outline on white. */
    public void paint(Graphics2D g, double x, double y, double size, Color color, boolean hollow) {
        Shape shape = at(x, y, hollow ? size * 0.9 : size);
        g.setColor(hollow ? Color.WHITE : color);
        g.fill(shape);
        if (hollow) {
            g.setColor(color);
            g.setStroke(Ink.FINE);
            g.draw(shape);
        }
    }
}
