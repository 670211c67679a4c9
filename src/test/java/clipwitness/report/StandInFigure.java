package clipwitness.report;

import clipwitness.figure.canvas.Canvas;
import clipwitness.figure.canvas.Figure;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A picture for tests: a frame, a curve, texts level and turned. */
record StandInFigure(String title, String finding, double aspect) implements Figure {
    private static final List<String> NAMES = List.of(
            "answer",
            "cycles-main",
            "cycles",
            "cycles-matched",
            "transfer",
            "harmonics",
            "harmonics-all",
            "series-thd",
            "series-level",
            "series-onset",
            "series-crest",
            "series-asymmetry",
            "series",
            "decisions");

    /** A picture for each name of the catalogue. */
    static Map<String, Figure> all() {
        Map<String, Figure> all = new LinkedHashMap<>();
        for (String name : NAMES) {
            all.put(
                    name,
                    new StandInFigure(
                            "Stands for " + name,
                            "What " + name + " says in a sentence.",
                            name.equals("answer") ? 0.28 : 0.5));
        }
        return all;
    }

    @Override
    public void paint(Canvas canvas, double width, double height) {
        Graphics2D graphics = canvas.graphics();
        graphics.setPaint(new Color(0xF2, 0xF4, 0xF6));
        graphics.fill(new Rectangle2D.Double(0, 0, width, height));
        graphics.setPaint(new Color(0x0B, 0x5F, 0xA5));
        graphics.setStroke(new BasicStroke(1.1f));
        Path2D curve = new Path2D.Double();
        curve.moveTo(0, height / 2);
        for (double x = 0; x < width; x += 2) {
            curve.lineTo(x, height / 2 - height / 3 * Math.sin(x / 30));
        }
        graphics.draw(curve);
        canvas.text("Drive in Ω, −3 dB", width / 2, height - 8, 8, false, Canvas.Anchor.MIDDLE, 0, Color.BLACK);
        canvas.text("Turned text", 10, height / 2, 8, true, Canvas.Anchor.MIDDLE, 90, Color.BLACK);
        canvas.text("right end", width - 4, 12, 8, true, Canvas.Anchor.END, 0, Color.BLACK);
        canvas.text("Unprintable 漢", 4, 12, 8, false, Canvas.Anchor.START, 0, Color.BLACK);
    }
}
