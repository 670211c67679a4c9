package clipwitness.report.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Says beforehand which characters of a text the embedded fonts cannot print. */
public final class Coverage implements AutoCloseable {
    /** The fonts have every letter of Latin up to here. */
    private static final int LAST_CERTAIN = 0x17F;

    private final PDDocument document = new PDDocument();
    private final Fonts fonts = new Fonts(document);
    private final Glyphs glyphs = new Glyphs(fonts);

    /** Whether a text is so plain that nobody needs to look. */
    public static boolean isPlain(String text) {
        return text.chars().allMatch(c -> c <= LAST_CERTAIN && (c >= ' ' || Character.isWhitespace(c)));
    }

    /**
     * What no font has, each character once with its code: {@code 修 (U+4FEE)}.
     *
     * @param text any text
     */
    public List<String> missing(String text) {
        return named(glyphs.missing(text).stream().filter(c -> !Glyphs.isRightToLeft(c)));
    }

    /**
     * Letters that would have to be set from right to left, which the report does not: {@code ש (U+05E9)}.
     *
     * @param text any text
     */
    public List<String> rightToLeft(String text) {
        return named(glyphs.missing(text).stream().filter(Glyphs::isRightToLeft));
    }

    private static List<String> named(Stream<Integer> characters) {
        return characters
                .map(c -> Character.isISOControl(c)
                        ? Glyphs.code(c)
                        : Character.toString(c) + " (" + Glyphs.code(c) + ")")
                .collect(Collectors.toList());
    }

    @Override
    public void close() {
        try {
            fonts.close();
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException("closing what lies in memory failed", e);
        }
    }
}
