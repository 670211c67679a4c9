package clipwitness.figure.canvas;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.Arrays;
import java.util.List;

/** Colours, dashes and markers in an order; past the last colour they begin again with another line and marker each. */
public final class LinePalette {
    private static final float[][] DASHES = {
        {}, {6, 3.5f}, {9, 2, 1.8f, 2}, {2, 1.5f}, {7, 2, 1.5f, 1.5f, 1.5f, 2}, {3.2f, 3}
    };
    private static final List<MarkerShape> MARKERS = List.of(MarkerShape.values());
    private static final float WIDTH = 1.15f;

    private final List<Color> colors;

    public LinePalette(int... rgb) {
        this.colors = Arrays.stream(rgb).mapToObj(Color::new).toList();
    }

    /** The style at a place in the palette. */
    public StateStyle style(int index, String label) {
        int hue = index % colors.size();
        int line = hue + index / colors.size();
        return new StateStyle(
                label, colors.get(hue), line(DASHES[line % DASHES.length]), MARKERS.get(line % MARKERS.size()));
    }

    private static BasicStroke line(float[] dashes) {
        return dashes.length == 0
                ? Ink.stroke(WIDTH)
                : new BasicStroke(WIDTH, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4, dashes, 0);
    }
}
