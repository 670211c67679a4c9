package clipwitness.figure.canvas;

/** A picture of finished results. It draws what was measured and decided; it computes and judges nothing. */
public interface Figure {
    /** What the figure shows, printed above it: a phrase without full stop. */
    String title();

    /** What the figure says, a sentence or two: the alternative text for those who cannot see it. */
    String finding();

    /** Height over width. */
    double aspect();

    /**
     * Draws the figure.
     *
     * @param canvas where to; the origin is the upper left corner, y grows downward, lengths are points (1/72 in)
     * @param width  points
     * @param height points
     */
    void paint(Canvas canvas, double width, double height);
}
