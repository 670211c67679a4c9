package clipwitness.report;

import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.figure.FigureCatalogue;
import clipwitness.figure.canvas.Figure;
import clipwitness.job.Job;
import clipwitness.report.build.ReportModels;
import clipwitness.report.model.IdentityPart;
import clipwitness.report.model.ReportModel;
import clipwitness.report.page.PageTemplate;
import clipwitness.report.page.ReportFiles;
import clipwitness.report.page.TemplateSource;
import clipwitness.report.paper.DocumentInfo;
import clipwitness.report.paper.PageException;
import clipwitness.report.paper.PdfPrinter;
import clipwitness.words.WordBundle;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The report as a PDF. */
public final class ReportDocument {
    private static final String WORDS = "words.properties";

    private ReportDocument() {}

    /**
     * Makes the PDF. The same arguments give the same bytes.
     *
     * @param results     results of the job
     * @param figures     pictures by name
     * @param template    template
     * @param attachments files that travel inside the PDF
     * @param software    program and version
     * @throws InputException if the template has a fault, or a picture of the job cannot be printed
     */
    public static byte[] render(
            JobResults results,
            Map<String, Figure> figures,
            TemplateSource template,
            List<AttachedFile> attachments,
            String software)
            throws InputException {
        ReportFiles files = new ReportFiles(template, results.job());
        files.check();
        WordBundle words = words(template);
        checkLanguage(results.job(), words, template);
        ReportModel model = new ReportModels(words).of(results, figures, files.logo(), files.photos(), software);
        String page = new PageTemplate(template, words).fill(model);
        byte[] pdf = print(page, new PdfPrinter(files, figures), info(results, model), attachments, template);
        files.check();
        return pdf;
    }

    /** Loads what rendering needs: fonts, template engine, renderer. May run beside anything else; the report is the same without. */
    public static void warmUp() {
        try {
            WarmUp.run();
        } catch (InputException | PageException e) {
            throw new IllegalArgumentException("the program's own template has a fault", e);
        }
    }

    private static byte[] print(
            String page, PdfPrinter printer, DocumentInfo info, List<AttachedFile> attachments, TemplateSource template)
            throws InputException {
        try {
            return printer.print(
                    page, info, attachments.stream().map(AttachedFile::embedded).toList());
        } catch (PageException e) {
            throw new InputException(Origin.of(template.nameOf(TemplateSource.PAGE)), e.getMessage(), e.remedy());
        }
    }

    /**
     * The pictures of a job in the words of a template, by name.
     *
     * @throws InputException if the template's words have a fault
     */
    public static Map<String, Figure> figures(JobResults results, TemplateSource template) throws InputException {
        return FigureCatalogue.of(results, words(template)).all();
    }

    /** The program's own words, some of them reworded by the template. */
    private static WordBundle words(TemplateSource template) throws InputException {
        WordBundle words = WordBundle.builtIn();
        Optional<String> own = TemplateSource.text(template.own(WORDS));
        return own.isPresent() ? words.reworded(own.get(), template.nameOf(WORDS)) : words;
    }

    /** A page in one language must not say that it is in another. */
    private static void checkLanguage(Job job, WordBundle words, TemplateSource template) throws InputException {
        String wanted = job.sheet().report().language();
        if (!words.speaks(wanted)) {
            throw new InputException(
                    new Origin(job.folder().resolve(Job.SHEET_FILE).toString(), 0, "report.language"),
                    "the template " + template.name() + " has no words in " + wanted,
                    "Its words are in " + words.language() + ": write language: " + words.language()
                            + ", or name a template folder whose words.properties has the line language = " + wanted);
        }
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
