package clipwitness.figure.canvas;

import java.awt.Color;
import java.awt.Graphics2D;

/** Where a figure is drawn: a page of the report, or a bitmap in a test. Shapes go to the graphics, text goes through the canvas. */
public interface Canvas {
    /** Graphics for shapes, in points; never for text. */
    Graphics2D graphics();

    /**
     * Width of a text in points.
     *
     * @param text text
     * @param size font size in points
     * @param bold whether bold
     */
    double textWidth(String text, double size, boolean bold);

    /**
     * Draws a text as text, in the report's embedded font.
     *
     * @param text    text
     * @param x       point that the anchor names, points
     * @param y       base line, points
     * @param size    font size in points
     * @param bold    whether bold
     * @param anchor  which part of the text stands at x
     * @param degrees turned counter-clockwise about (x, y)
     * @param color   colour
     */
    void text(String text, double x, double y, double size, boolean bold, Anchor anchor, double degrees, Color color);

    /** Which part of a text stands at the given point. */
    enum Anchor {
        /** Its left end. */
        START,
        /** Its middle. */
        MIDDLE,
        /** Its right end. */
        END
    }
}
