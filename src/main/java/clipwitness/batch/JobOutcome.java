package clipwitness.batch;

import clipwitness.compare.result.JobResults;
import clipwitness.fault.Problem;
import java.nio.file.Path;
import java.util.List;

/** How one job ended. */
public sealed interface JobOutcome {
    /** The job folder, as the user named it or as it was found. */
    Path folder();

    /**
     * The report was written.
     *
     * @param folder  the job folder
     * @param results what was measured and decided
     * @param written files written, the PDF last
     * @param warnings what the report could not show as it was meant
     */
    record Reported(Path folder, JobResults results, List<Path> written, List<Problem> warnings) implements JobOutcome {
        /** Copies what it is given. */
        public Reported {
            written = List.copyOf(written);
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * Nothing was written.
     *
     * @param folder   the job folder
     * @param problems why
     */
    record Failed(Path folder, List<Problem> problems) implements JobOutcome {
        /** Copies what it is given. */
        public Failed {
            problems = List.copyOf(problems);
        }
    }
}
