package clipwitness.figure.chart;

import clipwitness.figure.canvas.Box;
import clipwitness.figure.canvas.StateStyle;
import java.awt.Color;
import java.awt.Graphics2D;

/**
 * A state's bar from the bottom of the plot up to a value.
 *
 * @param style state
 * @param left  left edge, in the unit of the x axis
 * @param right right edge, in the unit of the x axis
 * @param top   value, in the unit of the y axis
 */
public record Bar(StateStyle style, double left, double right, double top) implements Layer {
    private static final double TINT = 0.45;

    @Override
    public void paint(Plot plot) {
        double y = plot.py(top);
        double bottom = plot.area().bottom();
        if (y < bottom) {
            double x = plot.px(left);
            Box box = new Box(x, y, plot.px(right) - x, bottom - y);
            plot.clipped(() -> paint(plot.canvas().graphics(), box, style));
        }
    }

    /** Paints a bar in a lighter tint of the state's colour, so that marker and uncertainty bar stand out on it. */
    static void paint(Graphics2D g, Box box, StateStyle style) {
        g.setColor(tinted(style.color()));
        g.fill(box.shape());
    }

    private static Color tinted(Color color) {
        return new Color(tinted(color.getRed()), tinted(color.getGreen()), tinted(color.getBlue()));
    }

    private static int tinted(int part) {
        return (int) Math.round(255 - (255 - part) * TINT);
    }
}
