package clipwitness.figure;

import clipwitness.figure.canvas.Canvas;
import java.awt.Color;
import java.awt.Graphics2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;

/** A canvas whose shapes go to a PDF form and whose texts are written over it afterwards. */
final class PreviewCanvas implements Canvas {
    private final Graphics2D graphics;
    private final PDFont regular;
    private final PDFont bold;
    private final List<Text> texts = new ArrayList<>();

    PreviewCanvas(Graphics2D graphics, PDFont regular, PDFont bold) {
        this.graphics = graphics;
        this.regular = regular;
        this.bold = bold;
    }

    @Override
    public Graphics2D graphics() {
        return graphics;
    }

    @Override
    public double textWidth(String text, double size, boolean isBold) {
        try {
            return (isBold ? bold : regular).getStringWidth(text) / 1000 * size;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void text(
            String text, double x, double y, double size, boolean isBold, Anchor anchor, double degrees, Color color) {
        double share = anchor == Anchor.START ? 0 : anchor == Anchor.MIDDLE ? 0.5 : 1;
        double back = share * textWidth(text, size, isBold);
        double turn = Math.toRadians(degrees);
        texts.add(new Text(text, x - back * Math.cos(turn), y + back * Math.sin(turn), size, isBold, turn, color));
    }

    void writeTexts(PDPageContentStream content, double height) throws IOException {
        for (Text text : texts) {
            content.beginText();
            content.setNonStrokingColor(text.color());
            content.setFont(text.bold() ? bold : regular, (float) text.size());
            content.setTextMatrix(Matrix.getRotateInstance(text.turn(), (float) text.x(), (float) (height - text.y())));
            content.showText(text.text());
            content.endText();
        }
    }

    private record Text(String text, double x, double y, double size, boolean bold, double turn, Color color) {}
}
