package clipwitness.report.data;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** The summary of many jobs as a table: a row a comparison, and one for each job that has none. */
public final class SummaryCsv {
    private static final String[] COLUMNS = {
        "job", "number", "state", "against", "verdict", "failedItems", "hints", "problem", "pdf", "done"
    };

    private SummaryCsv() {}

    /** The table as UTF-8, RFC 4180 with line feeds. */
    public static byte[] bytes(List<SummaryRow> rows) {
        StringBuilder text = new StringBuilder();
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader(COLUMNS)
                .setRecordSeparator('\n')
                .get();
        try (CSVPrinter printer = new CSVPrinter(text, format)) {
            for (SummaryRow row : rows) {
                write(printer, row);
            }
        } catch (IOException impossible) { // a string builder takes everything
            throw new UncheckedIOException(impossible);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Whether a file that begins so is such a table. */
    public static boolean isHead(String text) {
        return text.startsWith(String.join(",", COLUMNS) + "\n");
    }

    private static void write(CSVPrinter printer, SummaryRow row) throws IOException {
        List<JobSummary.Compared> comparisons =
                row.said().map(JobSummary::comparisons).orElse(List.of());
        if (comparisons.isEmpty()) {
            write(printer, row, Optional.empty());
        }
        for (JobSummary.Compared c : comparisons) {
            write(printer, row, Optional.of(c));
        }
    }

    private static void write(CSVPrinter printer, SummaryRow row, Optional<JobSummary.Compared> c) throws IOException {
        printer.printRecord(Stream.of(
                        row.job(),
                        row.said().map(JobSummary::number).orElse(""),
                        c.map(JobSummary.Compared::state).orElse(""),
                        c.map(JobSummary.Compared::against).orElse(""),
                        c.map(x -> x.verdict().code()).orElse(""),
                        c.map(x -> Tally.failed(x.tallies())).orElse(""),
                        hints(row),
                        String.join(" | ", row.problems()),
                        row.pdfs().stream().findFirst().orElse(""),
                        row.done())
                .map(SpreadsheetCell::harmless));
    }

    /** Codes of the hints of the job, each with the state that it is about. */
    private static String hints(SummaryRow row) {
        return row.said().map(JobSummary::hints).orElse(List.of()).stream()
                .map(h -> h.state().isEmpty() ? h.code() : h.code() + " (" + h.state() + ")")
                .collect(Collectors.joining("; "));
    }
}
