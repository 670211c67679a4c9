package clipwitness.cli;

import java.io.PrintWriter;
import java.util.function.IntSupplier;
import me.tongfei.progressbar.ProgressBarConsumer;

/** The line of the terminal on which a bar is drawn, as wide as the terminal, and taken away again. */
final class BarPlace implements ProgressBarConsumer {
    /** Longer lines are not read at a glance. */
    private static final int WIDEST = 119;

    private final PrintWriter err;
    private final IntSupplier columns;
    private int width;
    private boolean closed;

    /**
     * A line.
     *
     * @param err     where it appears
     * @param columns width of the terminal as it is now
     */
    BarPlace(PrintWriter err, IntSupplier columns) {
        this.err = err;
        this.columns = columns;
        measure();
    }

    /** Looks how wide the terminal is now; its last column stays free, for some terminals begin a new line there. */
    synchronized void measure() {
        width = Math.min(columns.getAsInt() - 1, WIDEST);
    }

    @Override
    public synchronized int getMaxRenderedLength() {
        return width;
    }

    @Override
    public synchronized void accept(String line) {
        if (!closed) {
            String all = line.length() > width ? line.substring(0, width) : line;
            err.print("\r" + all + " ".repeat(width - all.length()));
            err.flush();
        }
    }

    /** Takes the bar away, and prints lines in its place; it is drawn again below them. */
    synchronized void above(Runnable lines) {
        erase();
        lines.run();
    }

    private void erase() {
        err.print("\r" + " ".repeat(width) + "\r");
        err.flush();
    }

    /** Takes it away, for good. */
    synchronized void end() {
        if (!closed) {
            closed = true;
            erase();
        }
    }

    @Override
    public void close() {
        // the bar closes first, and draws once more
    }
}
