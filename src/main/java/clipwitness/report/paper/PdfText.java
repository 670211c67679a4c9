package clipwitness.report.paper;

import de.rototor.pdfbox.graphics2d.IPdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.io.IOException;
import java.text.AttributedCharacterIterator;
import java.text.AttributedString;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;

/**
 * Writes text into a figure straight from the document's fonts. The runs lie ready when the graphics, asked to draw a string,
 * calls back; so no font of the platform is ever looked for.
 */
final class PdfText implements IPdfBoxGraphics2DFontTextDrawer {
    private final Fonts fonts;
    private List<TextRun> runs = List.of();
    private double size;

    PdfText(Fonts fonts) {
        this.fonts = fonts;
    }

    /** Draws runs side by side, beginning at the origin of the graphics, in its colour. */
    void draw(Graphics2D graphics, List<TextRun> text, double points) {
        if (text.isEmpty()) {
            return;
        }
        runs = text;
        size = points;
        graphics.drawString(new AttributedString("text").getIterator(), 0f, 0f);
    }

    @Override
    public boolean canDrawText(AttributedCharacterIterator iterator, IFontTextDrawerEnv env) {
        return true;
    }

    @Override
    public void drawText(AttributedCharacterIterator iterator, IFontTextDrawerEnv env) throws IOException {
        PDPageContentStream stream = env.getContentStream();
        env.applyPaint(env.getPaint(), null);
        stream.beginText();
        stream.setTextMatrix(new Matrix(1, 0, 0, -1, 0, 0));
        for (TextRun run : runs) {
            stream.setFont(fonts.of(run.face()), (float) size);
            stream.showText(run.text());
        }
        stream.endText();
    }

    @Override
    public FontMetrics getFontMetrics(Font font, IFontTextDrawerEnv env) {
        throw new IllegalArgumentException("a figure asks its canvas for the width of a text, not the graphics");
    }
}
