package clipwitness.figure;

import clipwitness.compare.result.Decision;
import clipwitness.quantity.LimitQuantity;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;

/** How a decision looks: a sign drawn as a shape, and the colour that it has in the text; its word stands beside it. */
enum DecisionStyle {
    /** A tick. */
    PASS(new Color(0x1F7446)),
    /** A cross. */
    FAIL(new Color(0xB02A20)),
    /** An open circle. */
    UNDECIDED(new Color(0x8F6200));

    /** Width of a sign, points. */
    static final double WIDTH = 6.5;

    private static final BasicStroke STROKE = new BasicStroke(1.3f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);

    private final Color color;

    DecisionStyle(Color color) {
        this.color = color;
    }

    /**
     * The style of a decision.
     *
     * @throws IllegalArgumentException if nothing was decided
     */
    static DecisionStyle of(Decision decision) {
        return switch (decision) {
            case PASS -> PASS;
            case FAIL -> FAIL;
            case UNDECIDED -> UNDECIDED;
            case DESCRIBED -> throw new IllegalArgumentException("what is only described has no sign");
        };
    }

    Color color() {
        return color;
    }

    /** Whether a limit bounds a change from above only. */
    static boolean isOneSided(LimitQuantity quantity) {
        return switch (quantity) {
            case NULL_DEPTH, NOISE, HUM -> true;
            case LEVEL, THD, ASYMMETRY, CREST_FACTOR, RESPONSE, RAIL -> false;
        };
    }

    /** Paints the sign, its left end at x, its middle at y. */
    void paintSign(Graphics2D g, double x, double y) {
        g.setColor(color);
        g.setStroke(STROKE);
        double half = WIDTH / 2 - 0.6;
        if (this == UNDECIDED) {
            g.draw(new Ellipse2D.Double(x + 1, y - half + 0.4, 2 * half - 0.8, 2 * half - 0.8));
            return;
        }
        Path2D path = new Path2D.Double();
        double middle = x + WIDTH / 2;
        if (this == PASS) {
            path.moveTo(middle - half, y + 0.2);
            path.lineTo(middle - half * 0.25, y + half * 0.85);
            path.lineTo(middle + half, y - half * 0.85);
        } else {
            path.moveTo(middle - half * 0.8, y - half * 0.8);
            path.lineTo(middle + half * 0.8, y + half * 0.8);
            path.moveTo(middle - half * 0.8, y + half * 0.8);
            path.lineTo(middle + half * 0.8, y - half * 0.8);
        }
        g.draw(path);
    }
}
