package clipwitness.report.paper;

import clipwitness.figure.canvas.Figure;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;

/** Prints a filled page as a tagged PDF. The same page gives the same bytes. */
public final class PdfPrinter {
    static {
        XRLog.setLoggingEnabled(false);
    }

    private final PageFiles files;
    private final Map<String, Figure> figures;

    /**
     * A printer.
     *
     * @param files   what pages may name
     * @param figures figures that pages may show, by name
     */
    public PdfPrinter(PageFiles files, Map<String, Figure> figures) {
        this.files = files;
        this.figures = Map.copyOf(figures);
    }

    /**
     * Prints one page.
     *
     * @param page        XHTML; the root element carries the language
     * @param info        what the document says of itself
     * @param attachments what travels inside it
     * @return a PDF
     * @throws PageException if the page is no well-formed XHTML, or shows a figure that is not there
     */
    public byte[] print(String page, DocumentInfo info, List<EmbeddedFile> attachments) throws PageException {
        try (PDDocument document = new PDDocument();
                Fonts fonts = new Fonts(document)) {
            Glyphs glyphs = new Glyphs(fonts);
            FigureSizes sizes = new FigureSizes(figures, glyphs);
            Document parsed = Page.parse(glyphs.printable(page));
            sizes.check(parsed);
            render(document, parsed, sizes, fonts, glyphs);
            Metadata.write(document, info);
            Attachments.attach(document, attachments, Metadata.date(info));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        }
    }

    private void render(PDDocument document, Document page, FigureSizes sizes, Fonts fonts, Glyphs glyphs)
            throws IOException {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePDDocument(document);
        builder.withW3cDocument(page, "");
        builder.usePdfUaAccessibility(true);
        builder.addDOMMutator(sizes);
        builder.useUnicodeLineBreaker(new WordBreaker());
        builder.useObjectDrawerFactory(new FigureDrawer(figures, fonts, glyphs));
        new PageAccess(files).register(builder);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            fonts.register(renderer.getFontResolver(), glyphs.rareSigns());
            renderer.createPDFWithoutClosing();
        }
    }
}
