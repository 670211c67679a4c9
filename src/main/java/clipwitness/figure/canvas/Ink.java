package clipwitness.figure.canvas;

import java.awt.BasicStroke;
import java.awt.Color;

/** What all figures share: greys, line widths and text sizes, in points. */
public final class Ink {
    /** Text and axis lines. */
    public static final Color TEXT = new Color(0x33, 0x33, 0x33);

    /** Axis lines and tick marks. */
    public static final Color AXIS = new Color(0x77, 0x77, 0x77);

    /** Grid. */
    public static final Color GRID = new Color(0xDD, 0xDD, 0xDD);

    /** Zero line of the grid. */
    public static final Color ZERO = new Color(0xAA, 0xAA, 0xAA);

    /** Ground of a limit band. */
    public static final Color BAND = new Color(0xE9, 0xEE, 0xEA);

    /** Ends of a limit band. */
    public static final Color LIMIT = new Color(0x6F, 0x86, 0x75);

    /** Size of tick labels, axis labels and legends. */
    public static final double SMALL = 7.5;

    /** Size of panel headings. */
    public static final double HEADING = 8;

    /** Height of a text above its base line, as a share of its size: digits and capitals of the report's fonts. */
    public static final double CAP_HEIGHT = 0.66;

    /** Depth of a text below its base line, as a share of its size. */
    public static final double DEPTH = 0.25;

    /** Line height as a share of the size. */
    public static final double LEADING = 1.3;

    /** Thin line. */
    public static final BasicStroke HAIR = stroke(0.5f);

    /** Uncertainty bars and outlines of markers. */
    public static final BasicStroke FINE = stroke(0.8f);

    private Ink() {}

    /** Solid line with butt ends and true corners. */
    public static BasicStroke stroke(float width) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4);
    }

    /** Base line of a text whose capitals are to stand centred on a height. */
    public static double centred(double y, double size) {
        return y + size * CAP_HEIGHT / 2;
    }
}
