package clipwitness.report.paper;

import com.openhtmltopdf.pdfboxout.PageSupplier;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Hands out the pages of a document, and no more than it may have. */
final class Watch implements PageSupplier {
    private final int mostPages;
    private int pages;

    Watch(int mostPages) {
        this.mostPages = mostPages;
    }

    @Override
    public PDPage requestPage(PDDocument document, float width, float height, int pageNumber, int shadowPageNumber) {
        stopIfInterrupted();
        pages++;
        if (pages > mostPages) {
            throw new TooLong();
        }
        PDPage page = new PDPage(new PDRectangle(width, height));
        document.addPage(page);
        return page;
    }

    /** Ends the work of a thread that nobody waits for any more. */
    static void stopIfInterrupted() {
        if (Thread.currentThread().isInterrupted()) {
            throw new Stopped();
        }
    }

    /** The document has more pages than it may have. */
    static final class TooLong extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /** Nobody waits for the document any more. */
    static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }
}
