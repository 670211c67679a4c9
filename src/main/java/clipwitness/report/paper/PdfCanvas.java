package clipwitness.report.paper;

import clipwitness.figure.canvas.Canvas;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** A canvas on a page of the report: shapes become vectors, text stays text in the embedded fonts. */
final class PdfCanvas implements Canvas {
    private final Graphics2D graphics;
    private final PdfText pen;
    private final Fonts fonts;
    private final Glyphs glyphs;

    PdfCanvas(Graphics2D graphics, PdfText pen, Fonts fonts, Glyphs glyphs) {
        this.graphics = graphics;
        this.pen = pen;
        this.fonts = fonts;
        this.glyphs = glyphs;
    }

    @Override
    public Graphics2D graphics() {
        return graphics;
    }

    @Override
    public double textWidth(String text, double size, boolean bold) {
        return width(runs(text, bold), size);
    }

    @Override
    public void text(
            String text, double x, double y, double size, boolean bold, Anchor anchor, double degrees, Color color) {
        List<TextRun> runs = runs(text, bold);
        AffineTransform before = graphics.getTransform();
        graphics.translate(x, y);
        graphics.rotate(-Math.toRadians(degrees));
        graphics.translate(-share(anchor) * width(runs, size), 0);
        graphics.setPaint(color);
        pen.draw(graphics, runs, size);
        graphics.setTransform(before);
    }

    private static double share(Anchor anchor) {
        return switch (anchor) {
            case START -> 0;
            case MIDDLE -> 0.5;
            case END -> 1;
        };
    }

    private List<TextRun> runs(String text, boolean bold) {
        return TextRun.of(text, bold ? Face.BOLD : Face.REGULAR, glyphs);
    }

    private double width(List<TextRun> runs, double size) {
        double thousandths = 0;
        try {
            for (TextRun run : runs) {
                thousandths += fonts.of(run.face()).getStringWidth(run.text());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a width cannot be read from the program's own fonts", e);
        }
        return thousandths / 1000 * size;
    }
}
