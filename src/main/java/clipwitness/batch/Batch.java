package clipwitness.batch;

import clipwitness.batch.load.Workers;
import clipwitness.reading.Progress;
import clipwitness.report.ReportDocument;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;

/** Many jobs, as many side by side as there are cores; one that fails never stops another, and each is told of in the order of the jobs. */
public final class Batch {
    private final ReportOptions options;
    private final Listener listener;
    private final Progress progress;

    /** Told what is done and how each job ended; by several threads, perhaps. */
    public interface Listener {
        /**
         * The jobs are known; the first is about to be made.
         *
         * @param all how many there are
         */
        default void planned(int all) {}

        /**
         * Work for a job goes on.
         *
         * @param folder the job folder
         * @param stage  what is done now
         */
        default void doing(Path folder, Stage stage) {}

        /**
         * How much of the work of all jobs has ended, as far as their files tell; said before each end.
         *
         * @param share 0 to 1
         */
        default void worked(double share) {}

        /**
         * A job ended.
         *
         * @param outcome how
         * @param place   its place among all, from 1
         * @param all     how many there are
         */
        void ended(JobOutcome outcome, int place, int all);
    }

    /**
     * A batch.
     *
     * @param options  what the user asks of a report
     * @param listener told how each job ended, as soon as it ended
     * @param progress told how far the reading of exports has come
     */
    public Batch(ReportOptions options, Listener listener, Progress progress) {
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
        ExecutorService besides = Workers.start();
        try {
            Future<?> unused =
                    workers.submit(ReportDocument::warmUp); // the first job meets the same fault, and reports it
            JobRunner runner = new JobRunner(options, workers, progress, listener);
            List<BatchPlan.Step> plan = BatchPlan.of(paths, options);
            listener.planned(plan.size());
            List<Future<JobOutcome>> running =
                    plan.stream().map(s -> besides.submit(() -> run(s, runner))).toList();
            List<Long> work = plan.stream().map(BatchPlan.Step::work).toList();
            double all = work.stream().mapToLong(w -> w).sum();
            double done = 0;
            List<JobOutcome> outcomes = new ArrayList<>();
            for (Future<JobOutcome> job : running) {
                JobOutcome outcome = Workers.result(job);
                done += work.get(outcomes.size());
                outcomes.add(outcome);
                listener.worked(done / all);
                listener.ended(outcome, outcomes.size(), plan.size());
            }
            return outcomes;
        } finally {
            besides.shutdownNow();
            workers.shutdownNow();
        }
    }

    private static JobOutcome run(BatchPlan.Step step, JobRunner runner) {
        return step.task().isPresent()
                ? runner.run(step.task().get())
                : step.outcome().orElseThrow();
    }
}
