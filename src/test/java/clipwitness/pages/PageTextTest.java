package clipwitness.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No page of a sample report has text beyond its margins, or one text over another. */
class PageTextTest {
    private static final double POINTS_PER_MILLIMETRE = 72 / 25.4;

    /** Margin at the sides and at the top, less a millimetre for the side bearings of letters (the bench template: 18 and 14 mm). */
    private static final double SIDE = 17 * POINTS_PER_MILLIMETRE;

    private static final double TOP = 13 * POINTS_PER_MILLIMETRE;

    /** The foot stands within the lower margin; home printers leave 6 mm free. */
    private static final double BOTTOM = 6 * POINTS_PER_MILLIMETRE;

    static Stream<String> names() {
        return SamplePages.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyTextOfAPageLiesWithinItsMargins(String name) throws IOException {
        try (PDDocument document = SamplePages.open(name)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                assertThat(beyond(document, page)).as("page %d", page).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void noTextOfAPageLiesOverAnother(String name) throws IOException {
        try (PDDocument document = SamplePages.open(name)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                assertThat(overlaps(PageTexts.of(document, page)))
                        .as("page %d", page)
                        .isEmpty();
            }
        }
    }

    /** The two tests see what they look for: upright and turned words over one another, and one that runs out of the page. */
    @Test
    void wordsOverOneAnotherAndBeyondThePageAreSeen() throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(PDRectangle.A4);
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                write(content, "over", 100, 400);
                write(content, "under", 104, 402);
                write(content, "apart", 100, 300);
                write(content, "runs out", 570, 200);
            }
            assertThat(overlaps(PageTexts.of(document, 1))).isNotEmpty();
            assertThat(beyond(document, 1)).contains("t").doesNotContain("p");
        }
    }

    private static void write(PDPageContentStream content, String text, float x, float y) throws IOException {
        content.beginText();
        content.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 10);
        content.newLineAtOffset(x, y);
        content.showText(text);
        content.endText();
    }

    private static List<String> beyond(PDDocument document, int page) throws IOException {
        PDRectangle media = document.getPage(page - 1).getMediaBox();
        Rectangle2D inner = new Rectangle2D.Double(
                media.getLowerLeftX() + SIDE,
                media.getLowerLeftY() + BOTTOM,
                media.getWidth() - 2 * SIDE,
                media.getHeight() - TOP - BOTTOM);
        return PageTexts.of(document, page).stream()
                .filter(letter -> !inner.contains(letter.box()))
                .map(PageTexts.Letter::text)
                .toList();
    }

    private static List<String> overlaps(List<PageTexts.Letter> letters) {
        List<PageTexts.Letter> sorted = letters.stream()
                .sorted(Comparator.comparingDouble(l -> l.box().getX()))
                .toList();
        List<String> found = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            Rectangle2D box = sorted.get(i).box();
            for (int j = i + 1; j < sorted.size() && sorted.get(j).box().getX() < box.getMaxX(); j++) {
                if (sorted.get(i).isUnder(sorted.get(j))) {
                    found.add(sorted.get(i).text() + " / " + sorted.get(j).text() + " at " + box);
                }
            }
        }
        return found;
    }
}
