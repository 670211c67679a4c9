package clipwitness.figure;

import clipwitness.figure.canvas.Box;
import clipwitness.figure.canvas.Canvas;
import clipwitness.figure.canvas.Ink;
import clipwitness.figure.chart.Plot;
import clipwitness.measure.Measured;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * A change with its interval on a strip; where it leaves the strip an arrow says so. Of a bound only its upper end is known: a bar with an
 * arrow away from it.
 *
 * @param value change
 * @param unit  how its unit is written
 * @param style decision
 * @param words values in words
 */
record DecisionInterval(Measured.Value value, String unit, DecisionStyle style, ValueWords words) {
    private static final double HALF_CAP = 2.5;
    private static final double RADIUS = 2.1;
    private static final double ARROW = 9;
    private static final double SLACK = 0.01;
    private static final BasicStroke LINE = Ink.stroke(1.1f);

    /** Paints it about a height of the plot. */
    void paint(Plot plot, double y) {
        Box area = plot.area();
        double u = value.expanded();
        double at = plot.px(value.number());
        double to = plot.px(value.number() + u);
        if (value.isUpperBound()) {
            paintBound(plot, y, to);
        } else if (at > area.right() || at < area.x()) {
            paintBeyond(plot, y, at > area.right() ? 1 : -1);
        } else {
            paintInterval(plot, y, plot.px(value.number() - u), to);
        }
    }

    private void paintBound(Plot plot, double y, double bound) {
        Graphics2D g = plot.canvas().graphics();
        double left = Math.max(plot.area().x(), bound - ARROW);
        g.setColor(style.color());
        g.setStroke(LINE);
        g.draw(new Line2D.Double(left, y, bound, y));
        paintEnd(g, left, y, -1);
        paintEnd(g, bound, y, 0);
    }

    private void paintInterval(Plot plot, double y, double from, double to) {
        Graphics2D g = plot.canvas().graphics();
        Box area = plot.area();
        double left = Math.max(from, area.x());
        double right = Math.min(to, area.right());
        g.setColor(style.color());
        g.setStroke(LINE);
        g.draw(new Line2D.Double(left, y, right, y));
        paintEnd(g, left, y, from < area.x() - SLACK ? -1 : 0);
        paintEnd(g, right, y, to > area.right() + SLACK ? 1 : 0);
        double at = plot.px(value.number());
        g.fill(new Ellipse2D.Double(at - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS));
    }

    /** An arrow at the edge and the number beside it, on white, so that no line of the limit crosses it. */
    private void paintBeyond(Plot plot, double y, int side) {
        Graphics2D g = plot.canvas().graphics();
        double edge = side > 0 ? plot.area().right() : plot.area().x();
        g.setColor(style.color());
        g.setStroke(LINE);
        g.draw(new Line2D.Double(edge - side * ARROW, y, edge, y));
        paintEnd(g, edge, y, side);
        Canvas.Anchor anchor = side > 0 ? Canvas.Anchor.END : Canvas.Anchor.START;
        double base = Ink.centred(y, Ink.SMALL);
        String full = words.change(value, unit);
        boolean fits = plot.canvas().textWidth(full, Ink.SMALL, false) + ARROW + 2
                <= plot.area().width();
        String text = fits ? full : words.change(value, "");
        double at = edge - side * (ARROW + 2);
        double width = plot.canvas().textWidth(text, Ink.SMALL, false);
        g.setColor(Color.WHITE);
        g.fill(new Rectangle2D.Double(side > 0 ? at - width - 1 : at - 1, y - Ink.SMALL / 2, width + 2, Ink.SMALL));
        plot.canvas().text(text, at, base, Ink.SMALL, false, anchor, 0, style.color());
    }

    private static void paintEnd(Graphics2D g, double x, double y, int arrow) {
        Path2D end = new Path2D.Double();
        end.moveTo(x - arrow * 3, y - HALF_CAP);
        if (arrow != 0) {
            end.lineTo(x, y);
        }
        end.lineTo(x - arrow * 3, y + HALF_CAP);
        g.draw(end);
    }
}
