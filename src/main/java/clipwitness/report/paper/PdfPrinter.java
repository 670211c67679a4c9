package clipwitness.report.paper;

import clipwitness.figure.canvas.Figure;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Prints a filled page as a tagged PDF. The same page gives the same bytes. */
public final class PdfPrinter {
    private final PageFiles files;
    private final Map<String, Figure> figures;
    private final int mostPages;

    /**
     * A printer.
     *
     * @param files   what pages may name
     * @param figures figures that pages may show, by name
     */
    public PdfPrinter(PageFiles files, Map<String, Figure> figures) {
        this(files, figures, Integer.MAX_VALUE);
    }

    /** A printer that prints no more than so many pages. */
    public PdfPrinter(PageFiles files, Map<String, Figure> figures, int mostPages) {
        this.files = files;
        this.figures = Map.copyOf(figures);
        this.mostPages = mostPages;
    }

    /**
     * Prints one page.
     *
     * @param page        XHTML; the root element carries the language
     * @param info        what the document says of itself
     * @param attachments files that are attached to it
     * @return a PDF
     * @throws PageException if the page is no well-formed XHTML, shows a figure that is not there, or cannot be laid out
     */
    public byte[] print(String page, DocumentInfo info, List<EmbeddedFile> attachments) throws PageException {
        return print(page, info, attachments, remark -> {});
    }

    /**
     * The same, and says what styles are left out.
     *
     * @param remarks told of each
     */
    public byte[] print(String page, DocumentInfo info, List<EmbeddedFile> attachments, Consumer<StyleFault> remarks)
            throws PageException {
        try (PDDocument document = new PDDocument();
                Fonts fonts = new Fonts(document)) {
            Glyphs glyphs = new Glyphs(fonts);
            FigureSizes sizes = new FigureSizes(figures, glyphs);
            Page parsed = Page.parse(glyphs.printable(page));
            sizes.check(parsed);
            Layout layout = new Layout(files, figures, sizes, mostPages);
            layout.of(parsed, document, fonts, glyphs).forEach(remarks);
            StructureTree.tidy(document);
            Metadata.write(document, info);
            OutputIntent.write(document);
            Attachments.attach(document, attachments, Metadata.date(info));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        }
    }
}
