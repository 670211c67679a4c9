package clipwitness.report;

import clipwitness.compare.result.JobResults;
import clipwitness.fault.InputException;
import clipwitness.figure.canvas.Figure;
import clipwitness.fixture.ExampleJob;
import clipwitness.report.page.PageBudget;
import clipwitness.report.page.TemplateSource;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** A rendered report, opened for a look inside. */
final class Rendered implements AutoCloseable {
    private final PDDocument document;

    private Rendered(byte[] pdf) throws IOException {
        this.document = Loader.loadPDF(pdf);
    }

    /** Bytes of a report in a template. */
    static byte[] bytes(JobResults results, String template) throws InputException {
        return bytes(results, template, StandInFigure.all());
    }

    /** Bytes of a report with these pictures. */
    static byte[] bytes(JobResults results, String template, Map<String, Figure> figures) throws InputException {
        return ReportDocument.render(
                results,
                figures,
                TemplateSource.find(template, results.job().folder()),
                new Printing(
                        List.of(
                                new AttachedFile("job.yaml", new byte[] {'a'}),
                                new AttachedFile("HL-0231-results.json", new byte[] {'{', '}'}),
                                new AttachedFile("captures.csv", new byte[] {'b'})),
                        "clipwitness 0.1.0",
                        PageBudget.USUAL,
                        warning -> {}));
    }

    /** A report in a template. */
    static Rendered of(JobResults results, String template) throws InputException, IOException {
        return new Rendered(bytes(results, template));
    }

    /** A report of the built-in example. */
    static Rendered customer() throws InputException, IOException {
        return of(ExampleJob.good().results(), "customer");
    }

    /** A template folder among the test resources. */
    static String template(String name) {
        return Path.of("src/test/resources/clipwitness/report/" + name)
                .toAbsolutePath()
                .toString();
    }

    PDDocument document() {
        return document;
    }

    /** Text of all pages on one line, spaces made plain. */
    String text() {
        return text(1, document.getNumberOfPages());
    }

    /** Text of one page. */
    String page(int number) {
        return text(number, number);
    }

    private String text(int first, int last) {
        try {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(false);
            stripper.setStartPage(first);
            stripper.setEndPage(last);
            return stripper.getText(document).replaceAll("[\\s\u00A0\u2007]+", " ");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
