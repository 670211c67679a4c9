package clipwitness.report.paper;

import clipwitness.figure.canvas.Figure;
import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.util.Map;
import org.w3c.dom.Element;

/** Draws the page's {@code <object class="figure" data="NAME">} elements. */
final class FigureDrawer implements FSObjectDrawerFactory {
    private static final double POINTS_PER_PIXEL = 72.0 / 96.0;

    private final Map<String, Figure> figures;
    private final Fonts fonts;
    private final Glyphs glyphs;

    FigureDrawer(Map<String, Figure> figures, Fonts fonts, Glyphs glyphs) {
        this.figures = figures;
        this.fonts = fonts;
        this.glyphs = glyphs;
    }

    @Override
    public boolean isReplacedObject(Element element) {
        return figures.containsKey(element.getAttribute("data"));
    }

    @Override
    public FSObjectDrawer createDrawer(Element element) {
        Figure figure = figures.get(element.getAttribute("data"));
        return (e, x, y, width, height, device, context, dots) ->
                draw(figure, x, y, width / dots, height / dots, device);
    }

    private Map<Shape, String> draw(
            Figure figure, double x, double y, double width, double height, OutputDevice device) {
        device.drawWithGraphics(
                (float) x,
                (float) y,
                (float) width,
                (float) height,
                graphics -> paint(figure, graphics, width * POINTS_PER_PIXEL, height * POINTS_PER_PIXEL));
        return Map.of();
    }

    private void paint(Figure figure, Graphics2D graphics, double width, double height) {
        PdfText pen = new PdfText(fonts);
        ((PdfBoxGraphics2D) graphics).setFontTextDrawer(pen);
        graphics.scale(1 / POINTS_PER_PIXEL, 1 / POINTS_PER_PIXEL);
        try {
            figure.paint(new PdfCanvas(graphics, pen, fonts, glyphs), width, height);
        } catch (RuntimeException e) {
            throw new FigureFault(e);
        }
    }

    /** A figure could not be drawn: a fault of the program, not of the page that shows it. */
    static final class FigureFault extends RuntimeException {
        private static final long serialVersionUID = 1L;

        FigureFault(RuntimeException cause) {
            super("a figure could not be drawn", cause);
        }
    }
}
