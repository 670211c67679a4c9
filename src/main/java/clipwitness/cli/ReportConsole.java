package clipwitness.cli;

import clipwitness.batch.Batch;
import clipwitness.batch.JobOutcome;
import clipwitness.batch.Stage;
import clipwitness.fault.Problem;
import clipwitness.report.data.JobSummary;
import java.io.PrintWriter;
import java.nio.file.Path;

/**
 * Says what becomes of the jobs of a call, each as it ends: whoever stops a batch knows what is done. Progress appears only on a terminal. Several
 * threads may tell it.
 */
final class ReportConsole implements Batch.Listener, AutoCloseable {
    private final PrintWriter out;
    private final PrintWriter err;
    private final Talk talk;
    private final ReadingBar reading;
    private JobsBar jobs;

    /** How much is said. */
    enum Talk {
        /** Problems only. */
        QUIET,
        /** Verdicts and files, and progress on a terminal. */
        USUAL,
        /** Each step, too. */
        VERBOSE
    }

    /**
     * A console.
     *
     * @param out     where results go
     * @param err     where everything else goes
     * @param reading the bar over the reading of a single job
     */
    ReportConsole(PrintWriter out, PrintWriter err, Talk talk, ReadingBar reading) {
        this.out = out;
        this.err = err;
        this.talk = talk;
        this.reading = reading;
    }

    @Override
    public synchronized void planned(int all) {
        if (all > 1 && reading.isShown()) {
            reading.hide();
            jobs = new JobsBar(err, all);
        }
    }

    @Override
    public synchronized void doing(Path folder, Stage stage) {
        if (talk == Talk.VERBOSE) {
            above(() -> err.println(folder + ": " + text(stage)));
        }
        if (jobs != null) {
            Path name = folder.getFileName();
            jobs.doing((name == null ? folder : name) + ": " + text(stage));
        }
    }

    @Override
    public synchronized void ended(JobOutcome outcome, int place, int all) {
        above(() -> {
            problems(outcome);
            if (talk != Talk.QUIET) {
                result(outcome, all);
            }
            out.flush();
        });
        if (jobs != null) {
            jobs.ended();
        }
    }

    @Override
    public synchronized void close() {
        reading.close();
        if (jobs != null) {
            jobs.close();
            jobs = null;
        }
    }

    private void above(Runnable lines) {
        reading.clear();
        if (jobs == null) {
            lines.run();
        } else {
            jobs.above(lines);
        }
    }

    private void problems(JobOutcome outcome) {
        if (outcome instanceof JobOutcome.Failed failed) {
            failed.problems().forEach(p -> err.println(place(failed, p)));
        }
        if (outcome instanceof JobOutcome.Reported reported) {
            reported.warnings().forEach(p -> err.println("Warning: " + place(reported, p)));
        }
    }

    /** A message, with the job's folder before it where the message names only a file within. */
    private static String place(JobOutcome outcome, Problem problem) {
        String folder = outcome.folder().toString();
        String message = problem.line();
        return message.startsWith(folder) ? message : folder + ": " + message;
    }

    private void result(JobOutcome outcome, int all) {
        if (all > 1 && outcome instanceof JobOutcome.Failed) {
            out.println(outcome.folder() + ": " + ClosingTable.ended(outcome));
        }
        outcome.said().ifPresent(said -> {
            for (JobSummary.Compared c : said.comparisons()) {
                out.println(said.number() + ": " + c.state() + " against " + c.against() + ": "
                        + c.verdict().code());
            }
            if (outcome instanceof JobOutcome.Unchanged) {
                out.println(said.number() + ": unchanged, the report of an earlier run stands");
            }
        });
        outcome.files().forEach(out::println);
    }

    private static String text(Stage stage) {
        return switch (stage) {
            case CHECKING -> "looking for changes";
            case MEASURING -> "reading and measuring";
            case COMPARING -> "comparing";
            case PRINTING -> "making the pages";
            case WRITING -> "writing";
        };
    }
}
