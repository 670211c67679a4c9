package clipwitness.figure;

import clipwitness.figure.canvas.Box;
import clipwitness.figure.canvas.Canvas;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** A canvas over a bitmap that keeps what each text covers, measured in the report's own fonts. */
public final class RecordingCanvas implements Canvas {
    private static final TrueTypeFont REGULAR = font("/fonts/SourceSans3-Regular.ttf");
    private static final TrueTypeFont BOLD = font("/fonts/SourceSans3-SemiBold.ttf");

    private final Graphics2D graphics;
    private final List<Written> texts = new ArrayList<>();

    /** A canvas whose shapes go nowhere. */
    public RecordingCanvas() {
        this(new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB).createGraphics());
    }

    public RecordingCanvas(Graphics2D graphics) {
        this.graphics = graphics;
    }

    private static TrueTypeFont font(String resource) {
        try (InputStream in = RecordingCanvas.class.getResourceAsStream(resource)) {
            return new TTFParser().parse(new RandomAccessReadBuffer(in));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What was written, in the order of writing. */
    List<Written> texts() {
        return List.copyOf(texts);
    }

    @Override
    public Graphics2D graphics() {
        return graphics;
    }

    @Override
    public double textWidth(String text, double size, boolean bold) {
        TrueTypeFont font = bold ? BOLD : REGULAR;
        double units = 0;
        try {
            for (int letter : text.codePoints().toArray()) {
                int glyph = font.getUnicodeCmapLookup().getGlyphId(letter);
                if (glyph == 0) {
                    throw new IllegalArgumentException("the report's font has no " + Character.toString(letter));
                }
                units += font.getAdvanceWidth(glyph);
            }
            return units / font.getUnitsPerEm() * size;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void text(
            String text, double x, double y, double size, boolean bold, Anchor anchor, double degrees, Color color) {
        double width = textWidth(text, size, bold);
        double share = anchor == Anchor.START ? 0 : anchor == Anchor.MIDDLE ? 0.5 : 1;
        double up = 0.7 * size;
        double down = 0.22 * size;
        Box box = degrees == 90
                ? new Box(x - up, y - (1 - share) * width, up + down, width)
                : new Box(x - share * width, y - up, width, up + down);
        texts.add(new Written(text, box, size));
    }

    /**
     * One text.
     *
     * @param text text
     * @param box  what it covers
     * @param size font size, points
     */
    record Written(String text, Box box, double size) {}
}
