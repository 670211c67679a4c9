package clipwitness.report.page;

import clipwitness.fault.InputException;
import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Does work that may never end, in a thread of its own, which is left behind when the time is over. */
public final class InTime {
    /** Pages nest; so much is enough for the deepest that is let through, on every machine. */
    private static final long STACK_BYTES = 16L << 20;

    private InTime() {}

    /**
     * Does the work.
     *
     * @param <T>  what it gives
     * @param time how long it may take
     * @param work asks now and then whether its thread was interrupted, and ends if so
     * @throws InputException   as the work throws it
     * @throws TimeoutException when the time was over; the work was told to end
     */
    public static <T> T run(Duration time, Callable<T> work) throws InputException, TimeoutException {
        FutureTask<T> task = new FutureTask<>(work);
        Thread thread = new Thread(null, task, "clipwitness-page", STACK_BYTES);
        thread.setDaemon(true);
        thread.start();
        try {
            return task.get(time.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            task.cancel(true);
            throw e;
        } catch (InterruptedException e) {
            task.cancel(true);
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while a page was made", e);
        } catch (ExecutionException e) {
            throw thrown(e.getCause());
        }
    }

    private static InputException thrown(Throwable cause) {
        if (cause instanceof RuntimeException e) {
            throw e;
        }
        if (cause instanceof Error e) {
            throw e;
        }
        if (cause instanceof InputException e) {
            return e;
        }
        throw new IllegalStateException(cause);
    }
}
