package clipwitness.figure.chart;

import clipwitness.figure.canvas.Ink;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/** A bar with an arrow below it: the truth lies under the bar. */
final class BoundMark {
    private static final double HALF_WIDTH = 2.2;
    private static final double LENGTH = 9;
    private static final double HEAD = 3;

    private BoundMark() {}

    /** Paints the mark with its bar at a height, downward from there but not below a floor. */
    static void paint(Graphics2D g, double x, double top, double floor, Color color) {
        double bottom = Math.min(top + LENGTH, floor);
        g.setColor(color);
        g.setStroke(Ink.FINE);
        g.draw(new Line2D.Double(x - HALF_WIDTH, top, x + HALF_WIDTH, top));
        g.draw(new Line2D.Double(x, top, x, bottom));
        Path2D head = new Path2D.Double();
        head.moveTo(x - HEAD / 2, bottom - HEAD);
        head.lineTo(x, bottom);
        head.lineTo(x + HEAD / 2, bottom - HEAD);
        g.draw(head);
    }
}
