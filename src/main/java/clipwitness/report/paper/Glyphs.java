package clipwitness.report.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import org.apache.fontbox.ttf.CmapLookup;

/**
 * Which characters the embedded fonts can print. One that none of them has is printed as {@code �}, so that its reader sees
 * that something is missing.
 */
final class Glyphs {
    /** Stands for a character that no font has. */
    static final char MISSING = '�';

    private static final int FIRST_COMBINING = 0x300;
    private static final int LAST_COMBINING = 0x36F;

    private final Fonts fonts;
    private final CmapLookup usual;
    private CmapLookup fallback;

    Glyphs(Fonts fonts) {
        this.fonts = fonts;
        this.usual = lookup(Face.REGULAR);
    }

    private CmapLookup lookup(Face face) {
        try {
            return fonts.file(face).getUnicodeCmapLookup();
        } catch (IOException e) {
            throw new UncheckedIOException("the program's own font " + face + " cannot be read", e);
        }
    }

    /** The text with accents composed and every character that cannot be printed replaced. */
    String printable(String text) {
        String composed = text.codePoints().anyMatch(c -> c >= FIRST_COMBINING && c <= LAST_COMBINING)
                ? Normalizer.normalize(text, Normalizer.Form.NFC)
                : text;
        if (composed.codePoints().allMatch(c -> printable(c) == c)) {
            return composed;
        }
        StringBuilder clean = new StringBuilder(composed.length());
        composed.codePoints().map(this::printable).forEach(clean::appendCodePoint);
        return clean.toString();
    }

    private int printable(int codePoint) {
        if (codePoint == '\n' || codePoint == '\r' || codePoint == '\t') {
            return codePoint;
        }
        return codePoint >= ' ' && (inUsual(codePoint) || inFallback(codePoint)) ? codePoint : MISSING;
    }

    /** Whether the report's own face has the character. */
    boolean inUsual(int codePoint) {
        return usual.getGlyphId(codePoint) != 0;
    }

    /** Whether a text was seen with signs that the usual face lacks. */
    boolean rareSigns() {
        return fallback != null;
    }

    private boolean inFallback(int codePoint) {
        if (fallback == null) {
            fallback = lookup(Face.FALLBACK);
        }
        return fallback.getGlyphId(codePoint) != 0;
    }
}
