package clipwitness.batch;

import clipwitness.fault.Problem;
import clipwitness.report.data.JobSummary;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** How one job ended. */
public sealed interface JobOutcome {
    /** The job folder, as the user named it or as it was found. */
    Path folder();

    /** What its report says; empty where there is none. */
    default Optional<JobSummary> said() {
        if (this instanceof Reported reported) {
            return Optional.of(reported.summary());
        }
        return this instanceof Unchanged unchanged ? Optional.of(unchanged.summary()) : Optional.empty();
    }

    /** The files of its report, the PDF last. */
    default List<Path> files() {
        if (this instanceof Reported reported) {
            return reported.written();
        }
        return this instanceof Unchanged unchanged ? unchanged.standing() : List.of();
    }

    /**
     * The report was written.
     *
     * @param folder  the job folder
     * @param summary what its report says: the results themselves would fill the memory of a long batch
     * @param written files written, the PDF last
     * @param warnings what the report could not show as it was meant
     */
    record Reported(Path folder, JobSummary summary, List<Path> written, List<Problem> warnings) implements JobOutcome {
        /** Copies what it is given. */
        public Reported {
            written = List.copyOf(written);
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * The report of an earlier run stands, as it would come out the same.
     *
     * @param folder   the job folder
     * @param summary  what it says
     * @param standing its files, the PDF last
     */
    record Unchanged(Path folder, JobSummary summary, List<Path> standing) implements JobOutcome {
        /** Copies what it is given. */
        public Unchanged {
            standing = List.copyOf(standing);
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
