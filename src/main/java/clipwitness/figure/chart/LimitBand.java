package clipwitness.figure.chart;

import clipwitness.figure.canvas.Box;
import clipwitness.figure.canvas.Ink;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;

/**
 * The band of the y axis in which changes pass, its ends as lines.
 *
 * @param limit distance of the ends from 0, above 0
 */
public record LimitBand(double limit) implements Layer {
    @Override
    public void paint(Plot plot) {
        plot.clipped(() -> {
            Graphics2D g = plot.canvas().graphics();
            Box area = plot.area();
            double top = plot.py(limit);
            double bottom = plot.py(-limit);
            g.setColor(Ink.BAND);
            g.fill(new Box(area.x(), top, area.width(), bottom - top).shape());
            g.setColor(Ink.LIMIT);
            g.setStroke(Ink.FINE);
            g.draw(new Line2D.Double(area.x(), top, area.right(), top));
            g.draw(new Line2D.Double(area.x(), bottom, area.right(), bottom));
        });
    }
}
