package clipwitness.batch;

import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.job.Job;
import clipwitness.job.read.JobReader;
import clipwitness.reading.Progress;
import clipwitness.report.ReportDocument;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.function.Consumer;

/** Many jobs, one after the other; one that fails never stops the next. */
public final class Batch {
    private final ReportOptions options;
    private final Consumer<JobOutcome> listener;
    private final Progress progress;

    /**
     * A batch.
     *
     * @param options  what the user asks of a report
     * @param listener told how each job ended, as soon as it ended
     * @param progress told how far the reading of exports has come
     */
    public Batch(ReportOptions options, Consumer<JobOutcome> listener, Progress progress) {
        this.options = options;
        this.listener = listener;
        this.progress = progress;
    }

    /**
     * Makes the reports.
     *
     * @param paths job folders, or folders of job folders
     * @return how each job ended, in order
     */
    public List<JobOutcome> run(List<Path> paths) {
        ExecutorService workers = Workers.start();
        try {
            Future<?> unused =
                    workers.submit(ReportDocument::warmUp); // what it meets, the first job meets too, and says it
            List<JobOutcome> outcomes = new ArrayList<>();
            Map<String, Path> numbers = new HashMap<>();
            for (Path path : paths) {
                for (JobOutcome outcome : run(path, numbers, workers)) {
                    outcomes.add(outcome);
                    listener.accept(outcome);
                }
            }
            return outcomes;
        } finally {
            workers.shutdownNow();
        }
    }

    private List<JobOutcome> run(Path path, Map<String, Path> numbers, ExecutorService workers) {
        List<Path> folders;
        try {
            folders = JobFolders.of(path);
        } catch (InputException e) {
            return List.of(new JobOutcome.Failed(path, e.problems()));
        }
        List<JobOutcome> outcomes = new ArrayList<>();
        for (Path folder : folders) {
            outcomes.add(one(folder, numbers, workers));
        }
        return outcomes;
    }

    private JobOutcome one(Path folder, Map<String, Path> numbers, ExecutorService workers) {
        try {
            Job job = JobReader.read(folder);
            String number = job.sheet().report().number();
            Path earlier = numbers.putIfAbsent(number.toLowerCase(Locale.ROOT), folder);
            if (earlier != null) {
                throw new InputException(
                        new Origin(folder.resolve(Job.SHEET_FILE).toString(), 0, "report.number"),
                        "the number " + number + " is also that of " + earlier,
                        "Give each job of one call a number of its own; upper and lower case are alike, as file names are on"
                                + " many machines");
            }
            return new JobRunner(options, workers, progress).run(job);
        } catch (InputException e) {
            return new JobOutcome.Failed(folder, e.problems());
        } catch (RuntimeException | Error e) { // our mistake, but one job that fails never stops the next
            return OwnFault.unnumbered(folder, e).outcome(options);
        }
    }
}
