package clipwitness.figure.chart;

import clipwitness.figure.canvas.StateStyle;

/**
 * A state's marker alone.
 *
 * @param style  state
 * @param x      in the unit of the x axis
 * @param y      in the unit of the y axis
 * @param hollow whether it is an outline only
 */
public record Marker(StateStyle style, double x, double y, boolean hollow) implements Layer {
    private static final double SIZE = 5;

    @Override
    public void paint(Plot plot) {
        style.marker().paint(plot.canvas().graphics(), plot.px(x), plot.py(y), SIZE, style.color(), hollow);
    }
}
