package clipwitness.figure.canvas;

import java.awt.BasicStroke;
import java.awt.Color;

/**
 * How a state looks on every figure.
 *
 * @param label  what the report calls the state
 * @param color  colour
 * @param line   line
 * @param marker shape of its points
 */
public record StateStyle(String label, Color color, BasicStroke line, MarkerShape marker) {
    private static final float BROAD = 2.6f;
    private static final float THIN = 0.6f;

    /** The same as a thin pale line, beside which another one stands out. */
    public StateStyle pale() {
        BasicStroke thin = new BasicStroke(
                THIN, line.getEndCap(), line.getLineJoin(), line.getMiterLimit(), line.getDashArray(), 0);
        Color pale = new Color(paler(color.getRed()), paler(color.getGreen()), paler(color.getBlue()));
        return new StateStyle(label, pale, thin, marker);
    }

    private static int paler(int part) {
        return 255 - (255 - part) / 2;
    }

    /** The same as a broad line, on which a thin one can be seen. */
    public StateStyle broad() {
        BasicStroke broad = new BasicStroke(
                BROAD, line.getEndCap(), line.getLineJoin(), line.getMiterLimit(), line.getDashArray(), 0);
        return new StateStyle(label, color, broad, marker);
    }
}
