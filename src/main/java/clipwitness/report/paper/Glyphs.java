package clipwitness.report.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import org.apache.fontbox.ttf.CmapLookup;

/**
 * Which characters the embedded fonts can print. One that none of them has is printed as its code, {@code [U+4FEE]}, so that its
 * reader sees that something is missing and can look it up.
 */
final class Glyphs {
    private static final int FIRST_COMBINING = 0x300;
    private static final int LAST_COMBINING = 0x36F;

    /** Hebrew to Arabic Extended-A, the blocks of the Unicode Standard that lie side by side. */
    private static final int FIRST_RIGHT_TO_LEFT = 0x590;

    private static final int LAST_RIGHT_TO_LEFT = 0x8FF;

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
        if (composed.codePoints().allMatch(this::has)) {
            return composed;
        }
        StringBuilder clean = new StringBuilder(composed.length());
        composed.codePoints().forEach(c -> {
            if (has(c)) {
                clean.appendCodePoint(c);
            } else if (isSeen(c)) {
                clean.append('[').append(code(c)).append(']');
            }
        });
        return clean.toString();
    }

    /** Characters of a text that cannot be printed, each once. */
    List<Integer> missing(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFC)
                .codePoints()
                .filter(c -> !has(c) && isSeen(c))
                .distinct()
                .boxed()
                .toList();
    }

    /** Name of a code point, {@code U+4FEE}. */
    static String code(int codePoint) {
        return String.format(Locale.ROOT, "U+%04X", codePoint);
    }

    /** Characters that only steer how others are set leave no gap. */
    private static boolean isSeen(int codePoint) {
        return Character.getType(codePoint) != Character.FORMAT;
    }

    private boolean has(int codePoint) {
        return codePoint == '\n'
                || codePoint == '\r'
                || codePoint == '\t'
                || (codePoint >= ' ' && !isRightToLeft(codePoint) && (inUsual(codePoint) || inFallback(codePoint)));
    }

    /** Letters of scripts that run from right to left, and the marks on them: the report sets text from left to right alone, letter by letter. */
    static boolean isRightToLeft(int codePoint) {
        byte direction = Character.getDirectionality(codePoint);
        return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC
                || (direction == Character.DIRECTIONALITY_NONSPACING_MARK
                        && codePoint >= FIRST_RIGHT_TO_LEFT
                        && codePoint <= LAST_RIGHT_TO_LEFT);
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
