package clipwitness.figure;

import clipwitness.figure.canvas.Figure;
import clipwitness.fixture.DemoJobs;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.util.Matrix;

/** Writes every figure of every demo job to a PDF page of its own: {@code Preview FOLDER [JOB]}. */
final class Preview {
    private static final double WIDTH = 482;
    private static final float MARGIN = 10;

    private Preview() {}

    public static void main(String... arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        Files.createDirectories(folder);
        for (var job : DemoJobs.all().entrySet()) {
            if (arguments.length < 2 || arguments[1].equals(job.getKey())) {
                write(
                        folder.resolve(job.getKey() + ".pdf"),
                        FigureCatalogue.of(job.getValue()).all());
            }
        }
    }

    private static void write(Path file, Map<String, Figure> figures) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDFont regular = font(document, "/fonts/SourceSans3-Regular.ttf");
            PDFont bold = font(document, "/fonts/SourceSans3-SemiBold.ttf");
            for (var named : figures.entrySet()) {
                Figure figure = named.getValue();
                float height = (float) (WIDTH * figure.aspect());
                PDPage page = new PDPage(new PDRectangle((float) WIDTH + 2 * MARGIN, height + 2 * MARGIN + 10));
                document.addPage(page);
                PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, (float) WIDTH, height);
                PreviewCanvas canvas = new PreviewCanvas(graphics, regular, bold);
                figure.paint(canvas, WIDTH, height);
                graphics.dispose();
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    content.transform(Matrix.getTranslateInstance(MARGIN, MARGIN));
                    content.drawForm(graphics.getXFormObject());
                    canvas.writeTexts(content, height);
                    content.beginText();
                    content.setNonStrokingColor(Color.BLACK);
                    content.setFont(bold, 8);
                    content.newLineAtOffset(0, height + 6);
                    content.showText(named.getKey() + ": " + figure.title());
                    content.endText();
                }
                System.out.println(named.getKey() + " | " + figure.title() + " | " + figure.finding());
            }
            document.save(file.toFile());
        }
    }

    private static PDFont font(PDDocument document, String resource) throws IOException {
        try (InputStream in = Preview.class.getResourceAsStream(resource)) {
            return PDType0Font.load(document, in);
        }
    }
}
