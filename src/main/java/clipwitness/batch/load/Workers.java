package clipwitness.batch.load;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Threads that read and measure side by side, one a core; they never keep the program alive. */
public final class Workers {
    private Workers() {}

    /**
     * What some work came to. A fault of the program is thrown on.
     *
     * @param future the work, which throws nothing that is checked
     */
    public static <T> T result(Future<T> future) {
        try {
            return future.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while waiting for work", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(e.getCause());
        }
    }

    public static ExecutorService start() {
        return Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors(), work -> {
            Thread thread = new Thread(work, "clipwitness-worker");
            thread.setDaemon(true);
            return thread;
        });
    }
}
