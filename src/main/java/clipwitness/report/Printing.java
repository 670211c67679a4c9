package clipwitness.report;

import clipwitness.fault.Problem;
import clipwitness.report.page.PageBudget;
import java.util.List;
import java.util.function.Consumer;

/**
 * How a document is printed.
 *
 * @param attachments files that are attached to the PDF
 * @param software    program and version
 * @param budget      time and pages that the document may take
 * @param warnings    told what the document does not show as its template means it
 */
public record Printing(List<AttachedFile> attachments, String software, PageBudget budget, Consumer<Problem> warnings) {
    /** Copies the attachments. */
    public Printing {
        attachments = List.copyOf(attachments);
    }
}
