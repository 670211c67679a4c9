package clipwitness.batch;

import clipwitness.batch.load.Loading;
import clipwitness.compare.ready.Readiness;
import clipwitness.compare.result.ReadyResult;
import clipwitness.fault.InputException;
import clipwitness.job.CaptureRow;
import clipwitness.job.Job;
import clipwitness.job.Role;
import clipwitness.job.read.JobReader;
import clipwitness.reading.Progress;
import java.nio.file.Path;

/** Looks at a job before the unit is opened: only what was captured before the work is read. */
public final class Ready {
    private Ready() {}

    /**
     * What the captures of the states before the work can tell.
     *
     * @param folder   job folder
     * @param progress told how far the reading of exports has come
     * @throws InputException if the sheet, the table or one of these captures cannot be read
     */
    public static ReadyResult of(Path folder, Progress progress) throws InputException {
        Job job = JobReader.read(folder);
        return Readiness.of(job, Loading.some(job, r -> isBefore(job, r), progress));
    }

    private static boolean isBefore(Job job, CaptureRow row) {
        return row.state()
                .filter(s -> job.sheet().state(s).role() == Role.BEFORE)
                .isPresent();
    }
}
