package clipwitness.cli;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/** Ends a machine that {@link ShortRun} has started when the one that started it is gone, however that was ended. */
final class ParentWatch {
    private static final String STARTED_BY = "clipwitness.startedBy";

    private ParentWatch() {}

    /** The option that tells the other machine who starts it. */
    static String option() {
        return "-D" + STARTED_BY + "=" + ProcessHandle.current().pid();
    }

    /** Begins to watch, where this machine was started by another. */
    static void start() {
        Optional.ofNullable(Long.getLong(STARTED_BY))
                .ifPresent(pid -> whenGone(pid, () -> Runtime.getRuntime().halt(Clipwitness.TROUBLE)));
    }

    /** Does something once a process is gone, at once where it is gone already. */
    static void whenGone(long pid, Runnable action) {
        Optional<ProcessHandle> process = ProcessHandle.of(pid);
        if (process.isPresent()) {
            CompletableFuture<Void> unused = process.get().onExit().thenRun(action); // nobody waits for it
        } else {
            action.run();
        }
    }
}
