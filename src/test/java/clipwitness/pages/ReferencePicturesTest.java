package clipwitness.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The pages of the sample reports look as their reference pictures, 40 dots an inch in sixteen greys. Where one moved, {@code target/pages} holds
 * what was expected, what came and the difference; {@code -Dpages.rewrite=true} writes the reference pictures anew.
 */
class ReferencePicturesTest {
    private static final Path REFERENCES = Path.of("src/test/resources/clipwitness/pages");
    private static final Path MOVED = Path.of("target/pages");
    private static final boolean REWRITE = Boolean.getBoolean("pages.rewrite");
    private static final int DOTS_PER_INCH = 40;
    private static final Path README_PICTURE = Path.of("src/site/resources/page-one.png");
    /** Two dots for each of the 830 or so that a page on the web gives a picture: sharp on fine screens, too. */
    private static final int README_DOTS_PER_INCH = 200;

    /**
     * Levels of 255 by which machines may differ in a pixel. The rasteriser of the platform looks at 8 by 8 places of a pixel: an edge that passes a row
     * of them on the other side changes an eighth of it, 32 levels; the sixteen greys add one step, 17.
     */
    private static final int TOLERANCE = 32 + 17;

    /** Pixels of a page that may differ by more: none. A stroke that moves by a pixel, 0.6 mm, changes dozens. */
    private static final long MOST_DIFFERING = 0;

    static Stream<String> names() {
        return SamplePages.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyPageLooksAsBefore(String name) throws IOException {
        List<String> moved = new ArrayList<>();
        try (PDDocument document = SamplePages.open(name)) {
            PDFRenderer renderer = new PDFRenderer(document);
            int pages = document.getNumberOfPages();
            for (int page = 1; page <= pages; page++) {
                BufferedImage actual =
                        GreyPicture.of(renderer.renderImageWithDPI(page - 1, DOTS_PER_INCH, ImageType.GRAY));
                compare(file(name, page), actual, moved);
            }
            removeOrReport(name, pages, moved);
        }
        assertThat(moved).as("pages that moved; see target/pages").isEmpty();
    }

    /** The README shows the first page of the sample's report as the program makes it, in its colours; written anew with the others. */
    @Test
    void theReadmeShowsTheFirstPageAsItIs() throws IOException {
        try (PDDocument document = SamplePages.open("bass-drive-switch-customer")) {
            BufferedImage actual = ColourPicture.of(
                    new PDFRenderer(document).renderImageWithDPI(0, README_DOTS_PER_INCH, ImageType.RGB));
            if (REWRITE) {
                Files.createDirectories(README_PICTURE.getParent());
                Files.write(README_PICTURE, GreyPicture.packed(actual));
            }
            BufferedImage shown = ImageIO.read(README_PICTURE.toFile());
            assertThat(ColourPicture.differing(shown, actual, TOLERANCE)).isLessThanOrEqualTo(MOST_DIFFERING);
        }
        assertThat(Files.readString(Path.of("README.md")))
                .contains("](" + README_PICTURE.toString().replace('\\', '/') + ")");
    }

    private static String file(String name, int page) {
        return String.format(Locale.ROOT, "%s-%02d", name, page);
    }

    private static void compare(String page, BufferedImage actual, List<String> moved) throws IOException {
        Path reference = REFERENCES.resolve(page + ".png");
        if (REWRITE) {
            Files.createDirectories(REFERENCES);
            Files.write(reference, GreyPicture.packed(actual));
            return;
        }
        BufferedImage expected = Files.exists(reference)
                ? ImageIO.read(reference.toFile())
                : new BufferedImage(1, 1, BufferedImage.TYPE_BYTE_GRAY);
        if (GreyPicture.differing(expected, actual, TOLERANCE) > MOST_DIFFERING) {
            moved.add(page);
            Files.createDirectories(MOVED);
            ImageIO.write(actual, "png", MOVED.resolve(page + "-actual.png").toFile());
            ImageIO.write(expected, "png", MOVED.resolve(page + "-expected.png").toFile());
            ImageIO.write(
                    GreyPicture.difference(expected, actual, TOLERANCE),
                    "png",
                    MOVED.resolve(page + "-diff.png").toFile());
        }
    }

    /** A report that became shorter leaves pictures of pages that are no more. */
    private static void removeOrReport(String name, int pages, List<String> moved) throws IOException {
        for (int page = pages + 1; Files.exists(REFERENCES.resolve(file(name, page) + ".png")); page++) {
            if (REWRITE) {
                Files.delete(REFERENCES.resolve(file(name, page) + ".png"));
            } else {
                moved.add(file(name, page) + " is no more");
            }
        }
    }

    /** A hair line that moves by a pixel is seen; an edge that an eighth of a pixel moves is not. */
    @Test
    void aLineThatMovesIsSeenAndAnotherEdgeOfItsBlurIsNot() {
        BufferedImage line = line(20, 0xFF000000);
        assertThat(GreyPicture.differing(line, line(21, 0xFF000000), TOLERANCE)).isEqualTo(80);
        assertThat(GreyPicture.differing(line, line(20, 0xFF202020), TOLERANCE)).isZero();
        assertThat(GreyPicture.difference(line, line(21, 0xFF000000), TOLERANCE).getRGB(20, 5))
                .isEqualTo(0xFFB02A20);
    }

    private static BufferedImage line(int x, int ink) {
        BufferedImage image = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, 60, 40);
        graphics.dispose();
        for (int y = 0; y < 40; y++) {
            image.setRGB(x, y, ink);
        }
        return GreyPicture.of(image);
    }
}
