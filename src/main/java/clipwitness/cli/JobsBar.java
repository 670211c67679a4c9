package clipwitness.cli;

import java.io.PrintWriter;
import me.tongfei.progressbar.DelegatingProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/**
 * A bar on the terminal that shows how many jobs of a batch have ended, what is being done and about how long the rest takes. Other lines are printed
 * above it. It leaves nothing behind. Several threads may use it.
 */
final class JobsBar implements AutoCloseable {
    private static final int WIDTH = 79;
    private static final int LONGEST_TEXT = 34;
    private static final long NANOSECONDS = 1_000_000_000;
    private static final long SECONDS_A_MINUTE = 60;
    private static final long LONG_TIME = 100;

    private final PrintWriter err;
    private final int jobs;
    private final long start = System.nanoTime();
    private final ProgressBar bar;
    private int ended;
    private boolean closed;

    /**
     * A bar.
     *
     * @param err  where it appears
     * @param jobs how many there are, 1 or more
     */
    JobsBar(PrintWriter err, int jobs) {
        this.err = err;
        this.jobs = jobs;
        this.bar = new ProgressBarBuilder()
                .setTaskName("Jobs")
                .setStyle(ProgressBarStyle.ASCII)
                .setInitialMax(jobs)
                .hideEta()
                .setConsumer(new DelegatingProgressBarConsumer(this::draw, WIDTH))
                .build();
    }

    /** Says what is being done. */
    void doing(String what) {
        bar.setExtraMessage(message(what)); // never while this is locked: the bar locks itself, too, and draws
    }

    private synchronized String message(String what) {
        String left = ended == 0 ? "" : ", " + left(System.nanoTime() - start, ended, jobs);
        int room = LONGEST_TEXT - left.length();
        return (what.length() > room ? what.substring(0, room - 1) + "…" : what) + left;
    }

    /** One job more has ended. */
    void ended() {
        synchronized (this) {
            ended++;
        }
        bar.step();
    }

    /** Prints lines above the bar. */
    synchronized void above(Runnable lines) {
        erase();
        lines.run();
    }

    /**
     * About how long the rest takes, if its jobs take as long as those that ended.
     *
     * @param nanoseconds time so far
     * @param ended       jobs that ended, 1 or more
     * @param jobs        all jobs
     */
    static String left(long nanoseconds, int ended, int jobs) {
        long seconds = Math.round((double) nanoseconds / NANOSECONDS / ended * (jobs - ended));
        return seconds < LONG_TIME
                ? "about " + seconds + " s left"
                : "about " + Math.round((double) seconds / SECONDS_A_MINUTE) + " min left";
    }

    @Override
    public void close() {
        bar.close();
        synchronized (this) {
            closed = true;
            erase();
        }
    }

    private synchronized void draw(String line) {
        if (!closed) {
            err.print("\r" + line);
            err.flush();
        }
    }

    private void erase() {
        err.print("\r" + " ".repeat(WIDTH) + "\r");
        err.flush();
    }
}
