package clipwitness.cli;

import clipwitness.fault.Problem;
import java.io.PrintWriter;
import java.util.List;

/** What went wrong, a line each, on standard error. */
final class Messages {
    private Messages() {}

    static void print(PrintWriter err, List<Problem> problems) {
        problems.forEach(p -> err.println(p.line()));
    }
}
