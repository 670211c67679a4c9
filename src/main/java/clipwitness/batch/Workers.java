package clipwitness.batch;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** Threads that read and measure side by side, one a core; they never keep the program alive. */
final class Workers {
    private Workers() {}

    static ExecutorService start() {
        return Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors(), work -> {
            Thread thread = new Thread(work, "clipwitness-worker");
            thread.setDaemon(true);
            return thread;
        });
    }
}
