package clipwitness.figure.chart;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The font that the chart library measures its own, never painted, labels with. Java's font manager does not start on a machine
 * without installed fonts unless it is told not to look for any, so it is told so, and given one of the program's own fonts.
 */
final class LayoutFont {
    private static final String FONT_LIST_PROPERTY = "sun.awt.fontconfig";
    private static final String NO_INSTALLED_FONTS = "version=1\nsequence.allfonts=default\n";
    private static final String RESOURCE = "/fonts/SourceSans3-Regular.ttf";

    /** Loaded once, when a chart is first drawn. */
    static final Font FONT = load();

    private LayoutFont() {}

    private static Font load() {
        try (InputStream in = LayoutFont.class.getResourceAsStream(RESOURCE)) {
            if (System.getProperty(FONT_LIST_PROPERTY) == null) {
                Path list = Files.createTempFile("clipwitness", ".properties");
                list.toFile().deleteOnExit();
                Files.writeString(list, NO_INSTALLED_FONTS);
                System.setProperty(FONT_LIST_PROPERTY, list.toString());
            }
            return Font.createFont(Font.TRUETYPE_FONT, in).deriveFont(8f);
        } catch (IOException e) {
            throw new UncheckedIOException("the font for laying out charts cannot be loaded", e);
        } catch (FontFormatException e) {
            throw new IllegalStateException(RESOURCE + " is no font", e);
        }
    }
}
