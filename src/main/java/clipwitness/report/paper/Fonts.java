package clipwitness.report.paper;

import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
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

    /** Hands all faces to the renderer, which asks for a face only when a style names it. */
    void register(PdfRendererBuilder builder) {
        for (Face face : Face.values()) {
            builder.useFont(supplier(face), face.family(), face.weight(), face.style(), true);
        }
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
