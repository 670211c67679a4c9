package clipwitness.report.page;

import clipwitness.fault.InputException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
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

    private static final int MOST_WAITING = 20;

    private InTime() {}

    /**
     * Does the work.
     *
     * @param <T>  what it gives
     * @param time how long the work may occupy a processor, so that a busy machine takes nothing from it; twenty times as long where it gets none
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
            return finished(task, thread, time.toNanos());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while a page was made", e);
        } catch (ExecutionException e) {
            throw thrown(e.getCause());
        } finally {
            task.cancel(true); // does nothing to what has ended
        }
    }

    /** Waits as long as the thread may still work, again and again: it never works longer than that in the meantime. */
    private static <T> T finished(FutureTask<T> task, Thread thread, long time)
            throws InterruptedException, ExecutionException, TimeoutException {
        long left = time;
        for (long waited = 0; left > 0 && waited / MOST_WAITING < time; waited += left) {
            try {
                return task.get(left, TimeUnit.NANOSECONDS);
            } catch (TimeoutException e) {
                left = time - worked(thread, time);
            }
        }
        throw new TimeoutException();
    }

    /** Time that a thread occupied a processor, in ns; all of it where the machine does not measure that. */
    private static long worked(Thread thread, long all) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        boolean measured = threads.isThreadCpuTimeSupported() && threads.isThreadCpuTimeEnabled();
        long worked = measured ? threads.getThreadCpuTime(thread.getId()) : -1;
        return worked < 0 && !measured ? all : Math.max(0, worked);
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
