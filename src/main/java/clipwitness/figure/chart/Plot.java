package clipwitness.figure.chart;

import clipwitness.figure.canvas.Box;
import clipwitness.figure.canvas.Canvas;
import clipwitness.figure.canvas.Ink;
import clipwitness.figure.canvas.Texts;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;

/**
 * A rectangle of the canvas with two axes.
 *
 * @param canvas where to draw
 * @param area   the rectangle that the axes span
 * @param x      axis to the right
 * @param y      axis upward
 */
public record Plot(Canvas canvas, Box area, Axis x, Axis y) {
    private static final double ZERO_SHARE = 0.05;
    private static final double MARK = 2.5;
    private static final double GAP = 2;
    private static final double LABEL_GAP = 3;

    /** Length of the label of a y axis over the height of its plot, up to which it may reach into the free room above and below at its usual size. */
    private static final double BEYOND = 1.6;

    /** Size of the label of a y axis that is too long for a low plot at the usual one, points. */
    private static final double LEAST_LABEL = 6.2;

    /** Where a value of the x axis lies on the canvas. */
    public double px(double value) {
        return area.x() + x.scale().share(value) * area.width();
    }

    /** Where a value of the y axis lies on the canvas. */
    double py(double value) {
        return area.bottom() - y.scale().share(value) * area.height();
    }

    /** Room that the numbers and the label of a y axis need to its left. */
    static double leftMargin(Canvas canvas, Axis y) {
        double widest = 0;
        for (Axis.Tick tick : y.ticks()) {
            widest = Math.max(widest, canvas.textWidth(tick.text(), Ink.SMALL, false));
        }
        return MARK + GAP + widest + LABEL_GAP + Ink.SMALL * (Ink.CAP_HEIGHT + Ink.DEPTH) + 1;
    }

    /** Room that the numbers and the label of an x axis need below it. */
    static double bottomMargin() {
        return numbersMargin() + LABEL_GAP + Ink.SMALL * (Ink.CAP_HEIGHT + Ink.DEPTH) + 1;
    }

    /** Room that the numbers of an x axis need below it. */
    static double numbersMargin() {
        return MARK + GAP + Ink.SMALL * Ink.CAP_HEIGHT;
    }

    /** Grid, axis lines and marks, without numbers. */
    void paintGround() {
        Graphics2D g = canvas.graphics();
        g.setStroke(Ink.HAIR);
        for (Axis.Tick tick : x.ticks()) {
            g.setColor(gridColor(tick, x));
            g.draw(new Line2D.Double(px(tick.value()), area.y(), px(tick.value()), area.bottom()));
        }
        for (Axis.Tick tick : y.ticks()) {
            g.setColor(gridColor(tick, y));
            g.draw(new Line2D.Double(area.x(), py(tick.value()), area.right(), py(tick.value())));
        }
        g.setColor(Ink.AXIS);
        g.draw(new Line2D.Double(area.x(), area.y(), area.x(), area.bottom()));
        g.draw(new Line2D.Double(area.x(), area.bottom(), area.right(), area.bottom()));
    }

    private static Color gridColor(Axis.Tick tick, Axis axis) {
        return tick.value() == 0 && axis.scale().share(0) > ZERO_SHARE ? Ink.ZERO : Ink.GRID;
    }

    /** The label of the x axis below its numbers, in the middle of a row of plots. */
    void paintXLabel(Box row) {
        double base = numbersBase() + LABEL_GAP + Ink.SMALL * Ink.CAP_HEIGHT;
        String label = Texts.fitted(canvas, x.label(), Ink.SMALL, false, row.width());
        canvas.text(label, row.middleX(), base, Ink.SMALL, false, Canvas.Anchor.MIDDLE, 0, Ink.TEXT);
    }

    private double numbersBase() {
        return area.bottom() + numbersMargin();
    }

    /** Numbers of the x axis with their marks. */
    public void paintXNumbers() {
        Graphics2D g = canvas.graphics();
        double base = numbersBase();
        List<Span> spans = new ArrayList<>();
        for (Axis.Tick tick : x.ticks()) {
            double half = canvas.textWidth(tick.text(), Ink.SMALL, false) / 2 + GAP;
            spans.add(new Span(px(tick.value()) - half, px(tick.value()) + half));
        }
        for (int i : Span.apart(spans)) {
            Axis.Tick tick = x.ticks().get(i);
            double at = px(tick.value());
            g.setColor(Ink.AXIS);
            g.setStroke(Ink.HAIR);
            g.draw(new Line2D.Double(at, area.bottom(), at, area.bottom() + MARK));
            canvas.text(tick.text(), at, base, Ink.SMALL, false, Canvas.Anchor.MIDDLE, 0, Ink.TEXT);
        }
    }

    /**
     * Numbers and label of the y axis.
     *
     * @param room what the label may cover where the plot is lower than it is long
     */
    void paintYTexts(Span room) {
        Graphics2D g = canvas.graphics();
        List<Span> spans = new ArrayList<>();
        double half = Ink.SMALL * Ink.CAP_HEIGHT / 2 + GAP / 2;
        for (Axis.Tick tick : y.ticks()) {
            spans.add(new Span(py(tick.value()) - half, py(tick.value()) + half));
        }
        for (int i : Span.apart(spans)) {
            Axis.Tick tick = y.ticks().get(i);
            double at = py(tick.value());
            g.setColor(Ink.AXIS);
            g.setStroke(Ink.HAIR);
            g.draw(new Line2D.Double(area.x() - MARK, at, area.x(), at));
            double base = Ink.centred(at, Ink.SMALL);
            canvas.text(tick.text(), area.x() - MARK - GAP, base, Ink.SMALL, false, Canvas.Anchor.END, 0, Ink.TEXT);
        }
        double at = area.x() - leftMargin(canvas, y) + 1 + Ink.SMALL * Ink.CAP_HEIGHT;
        double usual = canvas.textWidth(y.label(), Ink.SMALL, false);
        boolean fits = usual <= room.to() - room.from() && usual <= BEYOND * area.height();
        double size = fits ? Ink.SMALL : LEAST_LABEL;
        String label = label(room.to() - room.from(), size);
        double reach = canvas.textWidth(label, size, false) / 2;
        double middle = Math.min(Math.max(area.middleY(), room.from() + reach), room.to() - reach);
        canvas.text(label, at, middle, size, false, Canvas.Anchor.MIDDLE, 90, Ink.TEXT);
    }

    /** The label of the y axis; its unit alone where a low plot has no room for more. */
    private String label(double room, double size) {
        String fitted = Texts.fitted(canvas, y.label(), size, false, room);
        return fitted.equals(y.label()) || y.unit().isEmpty() ? fitted : y.unit();
    }

    /** Runs a painter whose marks beyond the axes are cut off. */
    void clipped(Runnable painter) {
        Graphics2D g = canvas.graphics();
        Shape before = g.getClip();
        g.clip(area.shape());
        painter.run();
        g.setClip(before);
    }
}
