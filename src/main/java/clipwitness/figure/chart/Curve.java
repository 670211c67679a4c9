package clipwitness.figure.chart;

import clipwitness.capture.Samples;
import clipwitness.figure.canvas.StateStyle;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/**
 * A state's curve: one path of straight lines from point to point, never smoothed; a gap breaks it.
 *
 * @param style state
 * @param x     rising, in the unit of the x axis
 * @param y     in the unit of the y axis; NaN is a gap
 */
public record Curve(StateStyle style, Samples x, Samples y) implements Layer {
    /** Checks that both are of one length. */
    public Curve {
        if (x.size() != y.size()) {
            throw new IllegalArgumentException("a curve needs as many x as y");
        }
    }

    @Override
    public void paint(Plot plot) {
        Path2D path = path(plot);
        plot.clipped(() -> {
            Graphics2D g = plot.canvas().graphics();
            g.setColor(style.color());
            g.setStroke(style.line());
            g.draw(path);
        });
    }

    private Path2D path(Plot plot) {
        int[] indices = ThinnedCurve.indices(y, plot.area().width());
        Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO, indices.length);
        boolean pen = false;
        for (int i : indices) {
            if (Double.isNaN(y.at(i))) {
                pen = false;
            } else if (pen) {
                path.lineTo(plot.px(x.at(i)), plot.py(y.at(i)));
            } else {
                path.moveTo(plot.px(x.at(i)), plot.py(y.at(i)));
                pen = true;
            }
        }
        return path;
    }

    @Override
    public List<Trace> traces(Plot plot) {
        List<Point2D> points = new ArrayList<>();
        for (int i : ThinnedCurve.indices(y, plot.area().width())) {
            if (!Double.isNaN(y.at(i))) {
                points.add(new Point2D.Double(plot.px(x.at(i)), plot.py(y.at(i))));
            }
        }
        return List.of(new Trace(style.label(), style.color(), points));
    }
}
