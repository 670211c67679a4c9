package clipwitness.figure.canvas;

import java.awt.geom.Rectangle2D;

/**
 * A rectangle on the canvas.
 *
 * @param x      left edge, points
 * @param y      upper edge, points
 * @param width  points, 0 or more
 * @param height points, 0 or more
 */
public record Box(double x, double y, double width, double height) {
    public double right() {
        return x + width;
    }

    public double bottom() {
        return y + height;
    }

    public double middleX() {
        return x + width / 2;
    }

    public double middleY() {
        return y + height / 2;
    }

    /** What is left when margins are taken off; never less than nothing. */
    public Box inset(double left, double top, double right, double bottom) {
        return new Box(x + left, y + top, Math.max(0, width - left - right), Math.max(0, height - top - bottom));
    }

    /** The same with room added on all sides. */
    public Box grown(double by) {
        return new Box(x - by, y - by, width + 2 * by, height + 2 * by);
    }

    public boolean overlaps(Box other) {
        return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
    }

    public boolean contains(Box other) {
        return other.x >= x && other.y >= y && other.right() <= right() && other.bottom() <= bottom();
    }

    /** Whether a point is nearer to the rectangle than a distance; inside it is at 0. */
    public boolean isWithin(double distance, double px, double py) {
        double dx = Math.max(x - px, px - right());
        double dy = Math.max(y - py, py - bottom());
        return dx < distance && dy < distance && Math.hypot(Math.max(dx, 0), Math.max(dy, 0)) < distance;
    }

    public Rectangle2D shape() {
        return new Rectangle2D.Double(x, y, width, height);
    }
}
