package clipwitness.batch;

import clipwitness.capture.LabelText;
import clipwitness.fault.InputException;
import clipwitness.fault.Problem;
import clipwitness.report.FolderSink;
import clipwitness.report.Leftovers;
import clipwitness.report.SummaryDocument;
import clipwitness.report.data.JobSummary;
import clipwitness.report.data.SummaryCsv;
import clipwitness.report.data.SummaryRow;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The summary of many jobs, as a table and as a page for a browser, in the folder that the user named for all results. */
public final class BatchSummary {
    private static final String TABLE = "summary.csv";
    private static final String PAGE = "summary.html";

    private BatchSummary() {}

    /**
     * How the writing ended.
     *
     * @param written  files written
     * @param problems why none was
     * @param leftover files of earlier runs in the folder, of jobs that are not in this call
     */
    public record Ended(List<Path> written, List<Problem> problems, Optional<Problem> leftover) {
        /** Copies what it is given. */
        public Ended {
            written = List.copyOf(written);
            problems = List.copyOf(problems);
        }
    }

    /** Writes the summary of a call; nothing where it had one job, or no folder for all results. */
    public static Ended write(List<JobOutcome> outcomes, ReportOptions options) {
        if (outcomes.size() < 2 || options.out().isEmpty()) {
            return new Ended(List.of(), List.of(), Optional.empty());
        }
        Path out = options.out().get();
        List<SummaryRow> rows = outcomes.stream().map(BatchSummary::row).toList();
        Map<String, byte[]> documents = new LinkedHashMap<>();
        documents.put(TABLE, SummaryCsv.bytes(rows));
        documents.put(PAGE, SummaryDocument.bytes(rows, options.software()));
        try {
            new FolderSink(out).put(documents);
            return new Ended(
                    documents.keySet().stream().map(out::resolve).toList(), List.of(), leftover(out, outcomes));
        } catch (InputException e) {
            return new Ended(List.of(), e.problems(), Optional.empty());
        } catch (IOException e) {
            return new Ended(List.of(), List.of(Unwritten.problem(out, e)), Optional.empty());
        }
    }

    /** Of a job that failed the earlier report stands, under a number that may not be known: then nothing is left over for sure. */
    private static Optional<Problem> leftover(Path out, List<JobOutcome> outcomes) {
        List<String> numbers = outcomes.stream()
                .flatMap(o -> o.said().stream())
                .map(JobSummary::number)
                .toList();
        return numbers.size() < outcomes.size() ? Optional.empty() : Leftovers.ofOthers(out, numbers);
    }

    private static SummaryRow row(JobOutcome outcome) {
        List<String> pdfs = new ArrayList<>(outcome.files().stream()
                .map(f -> f.getFileName().toString())
                .filter(f -> f.endsWith(".pdf"))
                .toList());
        Collections.reverse(pdfs);
        return new SummaryRow(
                LabelText.line(outcome.folder().toString()),
                outcome.said(),
                outcome instanceof JobOutcome.Unchanged,
                problems(outcome).stream().map(p -> LabelText.line(p.line())).toList(),
                pdfs);
    }

    private static List<Problem> problems(JobOutcome outcome) {
        if (outcome instanceof JobOutcome.Failed failed) {
            return failed.problems();
        }
        return outcome instanceof JobOutcome.Reported reported ? reported.warnings() : List.of();
    }
}
