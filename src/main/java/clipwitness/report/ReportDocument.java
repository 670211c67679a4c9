package clipwitness.report;

import clipwitness.compare.result.JobResults;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import clipwitness.figure.FigureCatalogue;
import clipwitness.figure.canvas.Figure;
import clipwitness.job.Job;
import clipwitness.report.build.ReportModels;
import clipwitness.report.model.IdentityPart;
import clipwitness.report.model.ReportModel;
import clipwitness.report.page.FilledPage;
import clipwitness.report.page.InTime;
import clipwitness.report.page.PageTemplate;
import clipwitness.report.page.ReportFiles;
import clipwitness.report.page.TemplateSource;
import clipwitness.report.paper.DocumentInfo;
import clipwitness.report.paper.PageException;
import clipwitness.report.paper.PdfPrinter;
import clipwitness.report.paper.StyleFault;
import clipwitness.words.WordBundle;
import java.util.Map;
import java.util.concurrent.TimeoutException;

/** The report as a PDF. */
public final class ReportDocument {
    private static final long BYTES_PER_MEGABYTE = 1_000_000;

    private ReportDocument() {}

    /**
     * Makes the PDF. The same arguments give the same bytes.
     *
     * @param results     results of the job
     * @param figures     pictures by name
     * @param template    template
     * @param printing    how it is printed
     * @throws InputException if the template has a fault, or a picture of the job cannot be printed
     */
    public static byte[] render(
            JobResults results, Map<String, Figure> figures, TemplateSource template, Printing printing)
            throws InputException {
        try {
            TemplateSource inLanguage = template.in(language(results.job()));
            return InTime.run(printing.budget().time(), () -> rendered(results, figures, inLanguage, printing));
        } catch (TimeoutException e) {
            throw new InputException(
                    ErrorCode.PAGE_BUDGET,
                    Origin.of(template.nameOf(TemplateSource.PAGE)),
                    "the page is not finished after " + printing.budget().time().toSeconds() + " s",
                    "Look for what repeats without end or is out of all size; a page that needs longer gets it with --page-time");
        } catch (OutOfMemoryError e) {
            throw new InputException(
                    ErrorCode.OUT_OF_MEMORY,
                    Origin.of(template.nameOf(TemplateSource.PAGE)),
                    "the page needs more memory than the "
                            + Runtime.getRuntime().maxMemory() / BYTES_PER_MEGABYTE + " MB that the program has",
                    "Look for what is out of all size; a job that needs more gets it with CLIPWITNESS_OPTS set to -Xmx8g");
        }
    }

    private static byte[] rendered(
            JobResults results, Map<String, Figure> figures, TemplateSource template, Printing printing)
            throws InputException {
        ReportFiles files = new ReportFiles(template, results.job());
        files.check();
        WordBundle words = TemplateWords.of(template, results.job());
        ReportModel model =
                new ReportModels(words).of(results, figures, files.logo(), files.photos(), printing.software());
        FilledPage page = new PageTemplate(template, words).fill(model);
        PdfPrinter printer = new PdfPrinter(files, figures, printing.budget().pages());
        try {
            return print(page, printer, info(results, model), printing);
        } finally {
            files.check(); // a file that is not there is the cause of whatever else fails
        }
    }

    /** Loads what rendering needs: fonts, template engine, renderer. May run beside anything else; the report is the same without. */
    public static void warmUp() {
        try {
            WarmUp.run();
        } catch (InputException | PageException e) {
            throw new IllegalArgumentException("the program's own template has a fault", e);
        }
    }

    private static byte[] print(FilledPage page, PdfPrinter printer, DocumentInfo info, Printing printing)
            throws InputException {
        try {
            return printer.print(
                    page.text(),
                    info,
                    printing.attachments().stream().map(AttachedFile::embedded).toList(),
                    style -> printing.warnings().accept(warning(page, style)));
        } catch (PageException e) {
            if (e.getCause() != null && page.source().isBuiltIn()) {
                throw new IllegalArgumentException("the program's own template has a fault", e);
            }
            Origin place = e.line() > 0 ? page.placeOf(e.line()) : page.source().placeOf(e.named());
            throw new InputException(
                    e.isTooLong() ? ErrorCode.PAGE_BUDGET : ErrorCode.BAD_TEMPLATE, place, e.getMessage(), e.remedy());
        }
    }

    private static Problem warning(FilledPage page, StyleFault style) {
        Origin place = style.file().isEmpty()
                ? page.placeOfStyle(style.number(), style.line())
                : Origin.of(page.source().nameOf(style.file()), style.line());
        return new Problem(
                ErrorCode.BAD_TEMPLATE,
                place,
                "this style is left out: " + style.what(),
                "A template's styles are those of CSS 2.1 with paged media");
    }

    /**
     * The pictures of a job in the words of a template, by name.
     *
     * @throws InputException if the template's words have a fault
     */
    public static Map<String, Figure> figures(JobResults results, TemplateSource template) throws InputException {
        Job job = results.job();
        return FigureCatalogue.of(results, TemplateWords.of(template.in(language(job)), job))
                .all();
    }

    private static String language(Job job) {
        return job.sheet().report().language();
    }

    private static DocumentInfo info(JobResults results, ReportModel model) {
        IdentityPart identity = model.identity();
        return new DocumentInfo(
                identity.number() + " · " + identity.title(),
                identity.shop(),
                identity.unit(),
                identity.language(),
                results.job().sheet().report().date(),
                identity.software(),
                identity.digest());
    }
}
