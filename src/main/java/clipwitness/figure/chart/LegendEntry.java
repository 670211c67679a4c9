package clipwitness.figure.chart;

import clipwitness.figure.canvas.Box;
import clipwitness.figure.canvas.Ink;
import clipwitness.figure.canvas.MarkerShape;
import clipwitness.figure.canvas.StateStyle;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;

/**
 * One entry of a legend: a sample and what it stands for.
 *
 * @param text   what it stands for
 * @param width  width of the sample, points
 * @param sample paints the sample
 */
public record LegendEntry(String text, double width, Sample sample) {
    private static final double LINE = 22;
    private static final double SIGN = 9;
    private static final double MARKER = 5;

    /** Paints a sample from x to the right, about the height y. */
    interface Sample {
        void paint(Graphics2D g, double x, double y);
    }

    /** A state's line. */
    public static LegendEntry line(StateStyle style) {
        return new LegendEntry(style.label(), LINE, (g, x, y) -> paintLine(g, style, x, y));
    }

    /** A state's line with its marker. */
    public static LegendEntry points(StateStyle style) {
        return new LegendEntry(style.label(), LINE, (g, x, y) -> {
            paintLine(g, style, x, y);
            style.marker().paint(g, x + LINE / 2, y, MARKER, style.color(), false);
        });
    }

    /** A state's bar with its marker. */
    public static LegendEntry bar(StateStyle style) {
        return new LegendEntry(style.label(), SIGN, (g, x, y) -> {
            Bar.paint(g, new Box(x, y - 1, 8, 5), style);
            style.marker().paint(g, x + 4, y - 1, MARKER, style.color(), false);
        });
    }

    /** A marker that means the same for all states. */
    public static LegendEntry marker(String text, boolean hollow) {
        return new LegendEntry(
                text, SIGN, (g, x, y) -> MarkerShape.CIRCLE.paint(g, x + SIGN / 2, y, MARKER, Ink.TEXT, hollow));
    }

    /** The mark of a bound. */
    public static LegendEntry bound(String text) {
        return new LegendEntry(text, SIGN, (g, x, y) -> BoundMark.paint(g, x + SIGN / 2, y - 4, y + 5, Ink.TEXT));
    }

    /** Words without a sign. */
    public static LegendEntry words(String text) {
        return new LegendEntry(text, 0, (g, x, y) -> {});
    }

    private static void paintLine(Graphics2D g, StateStyle style, double x, double y) {
        g.setColor(style.color());
        g.setStroke(style.line());
        g.draw(new Line2D.Double(x, y, x + LINE, y));
    }
}
