package clipwitness.pages;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;

/** Every letter of a page and what it covers: from its base line up to the height of a small letter, as wide as it is. */
final class PageTexts extends PDFTextStripper {
    /** Height of a small letter over the size, somewhat under that of the report's font. */
    private static final double SMALL_LETTER = 0.45;

    private final List<Letter> letters = new ArrayList<>();

    private PageTexts(PDDocument document, int page) throws IOException {
        setStartPage(page);
        setEndPage(page);
        setSuppressDuplicateOverlappingText(false);
        getText(document);
    }

    /** The letters of a page, spaces left out; pages count from 1. */
    static List<Letter> of(PDDocument document, int page) throws IOException {
        return new PageTexts(document, page).letters;
    }

    @Override
    protected void processTextPosition(TextPosition text) {
        if (!text.getUnicode().isBlank()) {
            letters.add(new Letter(text.getUnicode(), box(text)));
        }
    }

    /** In points from the page's lower left corner; a turned text is as wide as its letters are high. */
    private static Rectangle2D box(TextPosition text) {
        Matrix at = text.getTextMatrix();
        double width = text.getWidthDirAdj();
        double height = SMALL_LETTER * text.getFontSizeInPt();
        return switch ((int) text.getDir()) {
            case 90 -> new Rectangle2D.Double(at.getTranslateX() - height, at.getTranslateY(), height, width);
            case 270 -> new Rectangle2D.Double(at.getTranslateX(), at.getTranslateY() - width, height, width);
            default -> new Rectangle2D.Double(at.getTranslateX(), at.getTranslateY(), width, height);
        };
    }

    /**
     * One letter.
     *
     * @param text what it says
     * @param box  what it covers, points
     */
    record Letter(String text, Rectangle2D box) {
        /** Whether another letter covers more of this one than neighbours of a word do. */
        boolean isUnder(Letter other) {
            Rectangle2D both = box.createIntersection(other.box);
            return both.getWidth() > SHARE * Math.min(box.getWidth(), other.box.getWidth())
                    && both.getHeight() > SHARE * Math.min(box.getHeight(), other.box.getHeight());
        }

        private static final double SHARE = 0.3;
    }
}
