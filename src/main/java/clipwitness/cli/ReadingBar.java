package clipwitness.cli;

import clipwitness.reading.Progress;
import java.io.PrintWriter;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/**
 * A bar on the terminal that shows how far the reading has come. It appears only where there is much to read and somebody to see it, and leaves
 * nothing behind.
 */
final class ReadingBar implements Progress, AutoCloseable {
    /** Less than this is read without a bar. */
    static final long LEAST_BYTES = 32L << 20;

    private static final long MEGABYTE = 1_000_000;

    private final PrintWriter err;
    private boolean shown;
    private ProgressBar bar;
    private BarPlace place;
    private long expected;
    private long read;

    /**
     * A bar.
     *
     * @param err   where it appears
     * @param shown whether anybody sees it there
     */
    ReadingBar(PrintWriter err, boolean shown) {
        this.err = err;
        this.shown = shown;
    }

    /** A bar that is shown where the program runs on a terminal. */
    static ReadingBar onTerminal(PrintWriter err) {
        return new ReadingBar(err, Terminal.shows());
    }

    /** Whether anybody sees it. */
    synchronized boolean isShown() {
        return shown;
    }

    /** Does not appear any more. */
    synchronized void hide() {
        shown = false;
    }

    @Override
    public synchronized void expect(long bytes) {
        expected += bytes;
        if (bar != null) {
            bar.maxHint(expected);
        } else if (shown && expected >= LEAST_BYTES) {
            place = new BarPlace(err, Terminal::columns);
            bar = new ProgressBarBuilder()
                    .setTaskName("Reading")
                    .setStyle(ProgressBarStyle.ASCII)
                    .setUnit(" MB", MEGABYTE)
                    .setInitialMax(expected)
                    .setConsumer(place)
                    .build();
        }
    }

    @Override
    public synchronized void advance(long bytes) {
        read += bytes;
        if (bar != null) {
            bar.stepTo(Math.min(read, expected));
        }
    }

    /** Takes the bar away; another may follow. */
    void clear() {
        ProgressBar last;
        BarPlace where;
        synchronized (this) {
            last = bar;
            where = place;
            bar = null;
            expected = 0;
            read = 0;
        }
        if (last != null) {
            last.refresh();
            last.close();
            where.end();
        }
    }

    @Override
    public void close() {
        clear();
    }
}
