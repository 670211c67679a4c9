package clipwitness.batch.load;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import java.util.Optional;

/** A job or a file exhausted memory or stack: it asks for more than this run of the program has, and the next one may well fit. */
public final class Exhausted {
    private static final long MEGABYTE = 1_000_000;

    private Exhausted() {}

    /**
     * What the user is told; empty where something else was thrown.
     *
     * @param where the job or the file
     * @param fault what was thrown
     */
    public static Optional<Problem> problem(String where, Throwable fault) {
        for (Throwable t = fault; t != null; t = t.getCause()) {
            if (t instanceof OutOfMemoryError) {
                return Optional.of(memory(where));
            }
            if (t instanceof StackOverflowError) {
                return Optional.of(new Problem(
                        ErrorCode.TOO_LARGE,
                        Origin.of(where),
                        "something in it is nested too deeply to be read",
                        "Look for lists within lists: nothing in a job needs more than a few levels"));
            }
        }
        return Optional.empty();
    }

    /** Something does not fit the memory. */
    public static Problem memory(String where) {
        return new Problem(
                ErrorCode.OUT_OF_MEMORY,
                Origin.of(where),
                "needs more memory than the " + Runtime.getRuntime().maxMemory() / MEGABYTE
                        + " MB that the program has",
                "Give it more, 8 GB with CLIPWITNESS_OPTS set to -Xmx8g, or export fewer samples");
    }
}
