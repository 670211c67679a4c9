package clipwitness.report;

import clipwitness.compare.plan.BenchPlan;
import clipwitness.fault.InputException;
import clipwitness.report.page.PageTemplate;
import clipwitness.report.page.TemplateSource;
import clipwitness.report.paper.DocumentInfo;
import clipwitness.report.paper.PageException;
import clipwitness.report.paper.PdfPrinter;
import clipwitness.words.Speech;
import clipwitness.words.WordBundle;
import java.util.List;
import java.util.Map;

/** A bench plan on one page, to be ticked off at the bench. */
public final class PlanSheet {
    private PlanSheet() {}

    /**
     * The page as a PDF.
     *
     * @param plan     plan
     * @param software program and version
     * @param digest   hexadecimal digest of the sheet that it was made for
     */
    public static byte[] bytes(BenchPlan plan, String software, String digest) {
        String title = Speech.ENGLISH.say("plan.title");
        DocumentInfo info =
                new DocumentInfo(title, "", title, "en", plan.sheet().report().date(), software, digest);
        TemplateSource template = TemplateSource.plan();
        try {
            String page = new PageTemplate(template, WordBundle.builtIn())
                    .fill(PlanPage.of(plan, software))
                    .text();
            return new PdfPrinter(template::any, Map.of()).print(page, info, List.of());
        } catch (InputException | PageException e) {
            throw new IllegalArgumentException("the program's own template has a fault", e);
        }
    }
}
