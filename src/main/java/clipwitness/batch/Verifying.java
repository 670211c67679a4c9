package clipwitness.batch;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.reading.Progress;
import clipwitness.report.data.ResultsDocument;
import clipwitness.report.evidence.PaperFile;
import clipwitness.report.page.InTime;
import clipwitness.report.page.PageBudget;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeoutException;

/** Says whether a report still matches its data. Writes nothing. */
public final class Verifying {
    private Verifying() {}

    /**
     * Looks at a report.
     *
     * @param report   a PDF
     * @param job      the job folder that it was made from; without one the report is held against itself alone
     * @param software name and version of this program
     * @param progress told how far the reading of exports has come
     * @throws InputException if the PDF is no report that can be read, or the job cannot be measured
     */
    public static Verification of(Path report, Optional<Path> job, String software, Progress progress)
            throws InputException {
        Verification verification = new Verification();
        PaperFile paper = read(report);
        Optional<ResultsDocument> results = new PaperAlone(paper, verification).check();
        results.ifPresent(r -> FilesBesidePaper.check(report, paper, r, verification));
        if (job.isPresent()) {
            JobFolders.requireJob(job.get());
            if (results.isPresent()) {
                new PaperAgainstJob(paper, results.get(), software, verification).check(job.get(), progress);
            }
        } else {
            verification.note("Without the job folder neither its files nor the pages of the report were looked at.");
        }
        return verification;
    }

    /** A file that is made to occupy the program ends after the time that a page may take. */
    private static PaperFile read(Path report) throws InputException {
        try {
            return InTime.run(PageBudget.USUAL.time(), () -> PaperFile.of(report));
        } catch (TimeoutException e) {
            throw new InputException(
                    ErrorCode.NOT_A_REPORT,
                    Origin.of(report.toString()),
                    "is not read after " + PageBudget.USUAL.time().toSeconds() + " s",
                    "Name a PDF that this program made, as it came from there");
        }
    }
}
