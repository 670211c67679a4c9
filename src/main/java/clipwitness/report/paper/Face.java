package clipwitness.report.paper;

import com.openhtmltopdf.css.constants.IdentValue;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.TTFParser;
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

    private static final int NUMBER_OF_TABLES = 4;
    private static final int FIRST_ENTRY = 12;
    private static final int ENTRY_LENGTH = 16;
    private static final int SUBSTITUTIONS = 'G' << 24 | 'S' << 16 | 'U' << 8 | 'B';
    private static final int UNKNOWN = 'g' << 24 | 's' << 16 | 'u' << 8 | 'b';

    /** Files that were unpacked, each once in the life of the program: the reports of a batch are set in the same. */
    private static final Map<Face, byte[]> FILES = new ConcurrentHashMap<>();

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
        try {
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes()));
            font.setEnableGsub(false);
            return font;
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    /** The file, which nobody changes. */
    private byte[] bytes() {
        return FILES.computeIfAbsent(this, Face::unpacked);
    }

    private byte[] unpacked() {
        try (InputStream in = Face.class.getResourceAsStream("/fonts/" + file)) {
            byte[] bytes = in.readAllBytes();
            hideSubstitutions(ByteBuffer.wrap(bytes));
            return bytes;
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    private UncheckedIOException unreadable(IOException cause) {
        return new UncheckedIOException("the program's own font " + file + " cannot be read", cause);
    }

    /** Gives the table of substitutions a name that no parser knows, in the font's directory (ISO/IEC 14496-22, 4.5). */
    private static void hideSubstitutions(ByteBuffer font) {
        int tables = font.getShort(NUMBER_OF_TABLES);
        for (int i = 0; i < tables; i++) {
            int entry = FIRST_ENTRY + i * ENTRY_LENGTH;
            if (font.getInt(entry) == SUBSTITUTIONS) {
                font.putInt(entry, UNKNOWN);
            }
        }
    }
}
