package clipwitness.cli;

import clipwitness.reading.Progress;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import me.tongfei.progressbar.DelegatingProgressBarConsumer;
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

    private static final Path STANDARD_ERROR = Path.of("/proc/self/fd/2");
    private static final int WIDTH = 79;
    private static final long MEGABYTE = 1_000_000;

    private final PrintWriter err;
    private boolean shown;
    private ProgressBar bar;
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
    @SuppressWarnings(
            "SystemConsoleNull") // newer machines have a console without a terminal too; then the path decides
    static ReadingBar onTerminal(PrintWriter err) {
        return new ReadingBar(err, System.console() != null && !isRedirected());
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
            bar = new ProgressBarBuilder()
                    .setTaskName("Reading")
                    .setStyle(ProgressBarStyle.ASCII)
                    .setUnit(" MB", MEGABYTE)
                    .setInitialMax(expected)
                    .setConsumer(new DelegatingProgressBarConsumer(this::print, WIDTH))
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
        synchronized (this) {
            last = bar;
            bar = null;
            expected = 0;
            read = 0;
        }
        if (last != null) {
            last.refresh();
            last.close();
            print(" ".repeat(WIDTH) + "\r");
        }
    }

    @Override
    public void close() {
        clear();
    }

    private void print(String line) {
        err.print("\r" + line);
        err.flush();
    }

    /** Whether standard error leads elsewhere than to the terminal, as far as the system tells. */
    private static boolean isRedirected() {
        try {
            return Files.exists(STANDARD_ERROR) && !STANDARD_ERROR.toRealPath().startsWith("/dev");
        } catch (IOException e) {
            return true; // a pipe has no path
        }
    }
}
