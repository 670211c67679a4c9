package clipwitness.report.paper;

import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxFontResolver;
import com.openhtmltopdf.pdfboxout.PdfBoxFontResolver.FontGroup;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The fonts of one document, each read when it is first needed and embedded once, as a subset. */
final class Fonts implements AutoCloseable {
    private final PDDocument document;
    private final Map<Face, TrueTypeFont> files = new EnumMap<>(Face.class);
    private final Map<Face, PDType0Font> fonts = new EnumMap<>(Face.class);

    Fonts(PDDocument document) {
        this.document = document;
    }

    /** A face as the document's font. */
    PDType0Font of(Face face) {
        return fonts.computeIfAbsent(face, this::embed);
    }

    /** The font file of a face. */
    TrueTypeFont file(Face face) {
        return files.computeIfAbsent(face, Face::read);
    }

    private PDType0Font embed(Face face) {
        try {
            return PDType0Font.load(document, file(face), true);
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own font " + face + " cannot be embedded", e);
        }
    }

    /**
     * Hands the faces to the renderer, which reads a face only when a style names it. The regular one is the last resort too, so
     * that a template that names no font, or one that is not there, is printed all the same.
     *
     * @param rareSigns whether the page has signs that only the fallback has
     */
    void register(PdfBoxFontResolver resolver, boolean rareSigns) {
        for (Face face : List.of(Face.REGULAR, Face.ITALIC, Face.BOLD)) {
            register(resolver, face, FontGroup.MAIN);
        }
        register(resolver, Face.REGULAR, FontGroup.FINAL_FALLBACK);
        if (rareSigns) {
            register(resolver, Face.FALLBACK, FontGroup.FINAL_FALLBACK);
        }
    }

    private void register(PdfBoxFontResolver resolver, Face face, FontGroup group) {
        resolver.addFont(supplier(face), face.family(), face.weight(), face.style(), true, group);
    }

    private PDFontSupplier supplier(Face face) {
        return new PDFontSupplier(null) {
            @Override
            public PDFont supply() {
                return of(face);
            }
        };
    }

    /** Closes the font files; only after the document was saved, which makes the subsets. */
    @Override
    public void close() throws IOException {
        for (TrueTypeFont file : files.values()) {
            file.close();
        }
    }
}
