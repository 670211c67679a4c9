package clipwitness.batch;

import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import java.nio.file.Path;

/** A fault of the program itself, put so that whoever mends it finds the place. */
final class OwnFault {
    private OwnFault() {}

    static Problem problem(Path folder, RuntimeException fault) {
        Throwable root = fault;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        StringBuilder way = new StringBuilder();
        for (StackTraceElement e : root.getStackTrace()) {
            if (e.getClassName().startsWith("clipwitness.") && way.length() < 200) {
                way.append(way.length() == 0 ? "" : ", ")
                        .append(e.getClassName().substring("clipwitness.".length()))
                        .append(':')
                        .append(e.getLineNumber());
            }
        }
        return new Problem(
                Origin.of(folder.toString()),
                "a fault of the program, not of the job: " + root.getMessage() + " (at " + way + ")",
                "The other jobs go on; please report it with the job folder");
    }
}
