package clipwitness.report.paper;

import com.openhtmltopdf.css.constants.IdentValue;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.GlyphSubstitutionTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFTable;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The faces that a report is set in; the files lie among the resources, with licence and origin beside them. */
enum Face {
    /** Running text. */
    REGULAR("SourceSans3-Regular.ttf", "Source Sans 3", 400, false),
    /** Asides. */
    ITALIC("SourceSans3-Italic.ttf", "Source Sans 3", 400, true),
    /** Headings and what must stand out; weight 600, asked for as bold. */
    BOLD("SourceSans3-SemiBold.ttf", "Source Sans 3", 700, false),
    /** For signs that the others lack. */
    FALLBACK("DejaVuSans.ttf", "DejaVu Sans", 400, false);

    private final String file;
    private final String family;
    private final int weight;
    private final boolean italic;

    Face(String file, String family, int weight, boolean italic) {
        this.file = file;
        this.family = family;
        this.weight = weight;
        this.italic = italic;
    }

    String family() {
        return family;
    }

    int weight() {
        return weight;
    }

    IdentValue style() {
        return italic ? IdentValue.ITALIC : IdentValue.NORMAL;
    }

    /** Reads the font. Ligatures are switched off, and their long table is not parsed: their glyphs could not be read back as text. */
    TrueTypeFont read() {
        try (InputStream in = Face.class.getResourceAsStream("/fonts/" + file)) {
            TrueTypeFont font = new WithoutLigatures().parse(new RandomAccessReadBuffer(in.readAllBytes()));
            font.setEnableGsub(false);
            return font;
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own font " + file + " cannot be read", e);
        }
    }

    /** Takes the table of substitutions for one that is not known. */
    private static final class WithoutLigatures extends TTFParser {
        @Override
        protected TTFTable readTable(String tag) {
            return super.readTable(GlyphSubstitutionTable.TAG.equals(tag) ? "" : tag);
        }
    }
}
