package clipwitness.report.paper;

import clipwitness.figure.canvas.Figure;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;

/** Lays a page out on the pages of a document. What the renderer cannot take is a fault of the page, with its line. */
final class Layout {
    static {
        XRLog.setLoggerImpl(new SilentLogger());
        XRLog.setLoggingEnabled(true);
        ImageIO.setUseCache(false); // pictures are read in memory, not by way of a temporary file
    }

    private final PageFiles files;
    private final Map<String, Figure> figures;
    private final FigureSizes sizes;
    private final int mostPages;

    Layout(PageFiles files, Map<String, Figure> figures, FigureSizes sizes, int mostPages) {
        this.files = files;
        this.figures = figures;
        this.sizes = sizes;
        this.mostPages = mostPages;
    }

    /** Lays out, and says what styles are left out. */
    List<StyleFault> of(Page page, PDDocument document, Fonts fonts, Glyphs glyphs) throws IOException, PageException {
        PageComplaints complaints = new PageComplaints();
        Document untouched = (Document) page.document().cloneNode(true);
        try {
            lay(page.document(), document, fonts, glyphs, complaints);
        } catch (FigureDrawer.FigureFault | Watch.Stopped e) {
            throw e;
        } catch (Watch.TooLong e) {
            throw PageException.tooLong(
                    "the document has more than " + (mostPages == 1 ? "one page" : mostPages + " pages"),
                    "Look for what is out of all size; a report that needs more pages gets them with --pages");
        } catch (RuntimeException | StackOverflowError e) {
            complaints.check();
            throw fault(page, untouched, e);
        }
        complaints.check();
        return complaints.styles();
    }

    private PageException fault(Page page, Document untouched, Throwable cause) {
        PageException fault = new Culprit(untouched, this::fails)
                .index()
                .map(
                        i -> new PageException(
                                page.lines().get(i),
                                "this element cannot be laid out",
                                "Write it more simply: without a float, a height or a line-height of 0 in a table, for instance"))
                .orElseGet(() -> new PageException(
                        "@page",
                        "the page cannot be laid out, not even without its content",
                        "Look at the size of the paper and at its margins, which must leave room for the content"));
        fault.initCause(cause);
        return fault;
    }

    private boolean fails(Document page) {
        try (PDDocument document = new PDDocument();
                Fonts fonts = new Fonts(document)) {
            lay(page, document, fonts, new Glyphs(fonts), new PageComplaints());
            return false;
        } catch (FigureDrawer.FigureFault | Watch.Stopped e) {
            throw e;
        } catch (RuntimeException | StackOverflowError | IOException e) {
            return true;
        }
    }

    private void lay(Document page, PDDocument document, Fonts fonts, Glyphs glyphs, PageComplaints complaints)
            throws IOException {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePDDocument(document);
        builder.usePageSupplier(new Watch(mostPages));
        builder.withDiagnosticConsumer(complaints);
        builder.withW3cDocument(page, "");
        builder.usePdfUaAccessibility(true);
        builder.usePdfAConformance(PdfRendererBuilder.PdfAConformance.PDFA_3_A);
        builder.addDOMMutator(sizes);
        builder.testMode(
                true); // pages come unpacked, for the structure is put right in them; nothing else is different
        builder.useUnicodeLineBreaker(new WordBreaker());
        builder.useObjectDrawerFactory(new FigureDrawer(figures, fonts, glyphs));
        new PageAccess(files).register(builder);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            fonts.register(renderer.getFontResolver(), glyphs.rareSigns());
            renderer.createPDFWithoutClosing();
        }
    }
}
