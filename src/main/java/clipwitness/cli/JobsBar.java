package clipwitness.cli;

import java.io.PrintWriter;
import java.util.function.IntSupplier;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/**
 * A bar on the terminal that shows how many jobs of a batch have ended, what is being done and about how long the rest takes. Other lines are printed
 * above it. It leaves nothing behind. Several threads may use it.
 */
final class JobsBar implements AutoCloseable {
    /** Columns that counts, times and a short bar take beside the text. */
    private static final int BESIDE_TEXT = 38;

    private static final int SHORTEST_NAME = 8;
    private static final long NANOSECONDS = 1_000_000_000;
    private static final long SECONDS_A_MINUTE = 60;
    private static final long LONG_TIME = 100;

    /** Less than this share of the work says nothing about the rest. */
    private static final double LEAST_SHARE = 0.01;

    private final long start = System.nanoTime();
    private final BarPlace place;
    private final ProgressBar bar;
    private double ended;

    /**
     * A bar.
     *
     * @param err     where it appears
     * @param jobs    how many there are, 1 or more
     * @param columns width of the terminal as it is now
     */
    JobsBar(PrintWriter err, int jobs, IntSupplier columns) {
        this.place = new BarPlace(err, columns);
        this.bar = new ProgressBarBuilder()
                .setTaskName("Jobs")
                .setStyle(ProgressBarStyle.ASCII)
                .setInitialMax(jobs)
                .hideEta()
                .continuousUpdate()
                .setConsumer(place)
                .build();
    }

    /**
     * Says what is being done.
     *
     * @param job  name of the job
     * @param what what is done for it
     */
    void doing(String job, String what) {
        place.measure();
        bar.setExtraMessage(message(job, what)); // never while this is locked: the bar locks itself, too, and draws
    }

    private synchronized String message(String job, String what) {
        String left = ended < LEAST_SHARE ? "" : ", " + left(System.nanoTime() - start, ended);
        return text(job, what, left, place.getMaxRenderedLength() - BESIDE_TEXT);
    }

    /**
     * As much of the text as there is room for: the name gives way first, then what is done.
     *
     * @param left with the comma before it, empty where it is not known yet
     * @param room columns
     */
    static String text(String job, String what, String left, int room) {
        String said = what + left;
        int forName = room - said.length() - 2;
        if (forName >= job.length()) {
            return job + ": " + said;
        }
        if (forName >= SHORTEST_NAME) {
            return job.substring(0, forName - 1) + "…: " + said;
        }
        if (said.length() <= room) {
            return said;
        }
        String time = left.replaceFirst("^, ", "");
        return time.length() <= room ? time : "";
    }

    /**
     * One job more has ended.
     *
     * @param share of the whole work that has ended, 0 to 1
     */
    void ended(double share) {
        synchronized (this) {
            ended = share;
        }
        place.measure();
        bar.step();
    }

    /** Prints lines above the bar. */
    void above(Runnable lines) {
        place.above(lines);
    }

    /**
     * About how long the rest takes, if it takes as long for its work as what has ended.
     *
     * @param nanoseconds time so far
     * @param share       of the work that has ended, above 0
     */
    static String left(long nanoseconds, double share) {
        long seconds = Math.round((double) nanoseconds / NANOSECONDS / share * (1 - share));
        return seconds < LONG_TIME
                ? "about " + seconds + " s left"
                : "about " + Math.round((double) seconds / SECONDS_A_MINUTE) + " min left";
    }

    @Override
    public void close() {
        bar.close();
        place.end();
    }
}
