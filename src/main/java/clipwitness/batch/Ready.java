package clipwitness.batch;

import clipwitness.capture.InputException;
import clipwitness.compare.Readiness;
import clipwitness.compare.ReadyResult;
import clipwitness.job.CaptureRow;
import clipwitness.job.Job;
import clipwitness.job.JobReader;
import clipwitness.job.Role;
import clipwitness.reading.Progress;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;

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
        List<CaptureRow> before =
                job.captures().stream().filter(r -> isBefore(job, r)).toList();
        ExecutorService workers = Workers.start();
        try {
            return Readiness.of(job, Loading.all(new Job(job.folder(), job.sheet(), before), workers, progress));
        } finally {
            workers.shutdownNow();
        }
    }

    private static boolean isBefore(Job job, CaptureRow row) {
        return row.state()
                .filter(s -> job.sheet().state(s).role() == Role.BEFORE)
                .isPresent();
    }
}
