package clipwitness.pages;

import clipwitness.batch.Batch;
import clipwitness.batch.JobOutcome;
import clipwitness.batch.ReportOptions;
import clipwitness.fixture.JobFolder;
import clipwitness.reading.Progress;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The reports of the sample jobs in both templates and languages, written once for all tests. */
final class SamplePages {
    /** What a name of a German report ends with. */
    static final String GERMAN = "-de";

    private static final List<String> TEMPLATES = List.of("bench", "customer");
    private static final Map<String, byte[]> REPORTS = written();

    private SamplePages() {}

    /** Names of the reports: job, template, and the language where it is German. */
    static Stream<String> names() {
        return REPORTS.keySet().stream();
    }

    /** A report, opened. */
    static PDDocument open(String name) {
        try {
            return Loader.loadPDF(REPORTS.get(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<String, byte[]> written() {
        Map<String, byte[]> reports = new TreeMap<>();
        try (Stream<Path> jobs = Files.list(Path.of("sample-captures"))) {
            for (Path job : jobs.filter(Files::isDirectory).sorted().toList()) {
                for (String template : TEMPLATES) {
                    reports.put(job.getFileName() + "-" + template, report(job, template));
                    reports.put(job.getFileName() + "-" + template + GERMAN, german(job, template));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return reports;
    }

    /** The report of the same job whose sheet asks for German. */
    private static byte[] german(Path job, String template) throws IOException {
        Path copy = Files.createTempDirectory("german").resolve(job.getFileName());
        try {
            JobFolder.sample(job.getFileName().toString(), copy);
            Path sheet = copy.resolve("job.yaml");
            String other = Files.readString(sheet).replaceFirst("\\n  language: en", "");
            Files.writeString(sheet, other.replaceFirst("\\nreport:\\n", "\nreport:\n  language: de\n"));
            return report(copy, template);
        } finally {
            delete(copy.getParent());
        }
    }

    private static byte[] report(Path job, String template) throws IOException {
        Path out = Files.createTempDirectory("pages");
        try {
            ReportOptions options = new ReportOptions(Optional.of(out), List.of(template), "clipwitness 0.1.0");
            JobOutcome outcome = new Batch(options, (done, place, all) -> {}, Progress.NONE)
                    .run(List.of(job))
                    .get(0);
            Path pdf = ((JobOutcome.Reported) outcome)
                    .written().stream()
                            .filter(f -> f.toString().endsWith(".pdf"))
                            .findFirst()
                            .orElseThrow();
            return Files.readAllBytes(pdf);
        } finally {
            delete(out);
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
