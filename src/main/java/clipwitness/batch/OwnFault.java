package clipwitness.batch;

import clipwitness.batch.load.Exhausted;
import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import clipwitness.report.FolderSink;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A fault of the program itself; a job that memory or stack do not suffice for is none. The whole stack trace, with the causes and the versions of the program and of Java, goes to the file
 * {@code N-fault.txt} in the folder of the results; the message names that file.
 *
 * @param folder the job folder
 * @param name   number of the report, or the folder's name where the number is not known
 * @param fault  what was thrown
 */
record OwnFault(Path folder, String name, Throwable fault) {
    private static final int MOST_PLACES = 200;

    /** A fault that occurred before the number of the report was known. */
    static OwnFault unnumbered(Path folder, Throwable fault) {
        Path name = folder.toAbsolutePath().normalize().getFileName();
        return new OwnFault(folder, name == null ? "job" : name.toString(), fault);
    }

    /** Says how the job ended, and writes the stack trace where the program is at fault; a stack trace that cannot be written is a second problem. */
    JobOutcome.Failed outcome(ReportOptions options) {
        return Exhausted.problem(folder.toString(), fault)
                .map(p -> new JobOutcome.Failed(folder, List.of(p)))
                .orElseGet(() -> traced(options));
    }

    private JobOutcome.Failed traced(ReportOptions options) {
        Path out = options.outputOf(folder);
        List<Problem> problems = new ArrayList<>();
        try {
            Task.requireOwnFolder(folder, options);
            new FolderSink(out).put(Map.of(file(name), trace(options.software()).getBytes(StandardCharsets.UTF_8)));
            problems.add(problem("the job folder and " + out.resolve(file(name)) + ", which holds the stack trace"));
        } catch (InputException e) {
            problems.add(problem("the job folder"));
            problems.addAll(e.problems());
        } catch (IOException e) {
            problems.add(problem("the job folder"));
            problems.add(Unwritten.problem(out.resolve(file(name)), e));
        }
        return new JobOutcome.Failed(folder, problems);
    }

    /** Name of the file that takes the stack trace. */
    static String file(String name) {
        return name + "-fault.txt";
    }

    /**
     * The message.
     *
     * @param evidence what is to be sent along
     */
    Problem problem(String evidence) {
        Throwable root = root();
        String said = root.getMessage() == null ? root.getClass().getSimpleName() : root.getMessage();
        return new Problem(
                ErrorCode.PROGRAM_FAULT,
                Origin.of(folder.toString()),
                "a fault of the program, not of the job: " + said + " (at " + places(root) + ")",
                "The other jobs go on; please report it with " + evidence);
    }

    private Throwable root() {
        Throwable root = fault;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        return root;
    }

    private static String places(Throwable root) {
        StringBuilder places = new StringBuilder();
        for (StackTraceElement e : root.getStackTrace()) {
            if (e.getClassName().startsWith("clipwitness.") && places.length() < MOST_PLACES) {
                places.append(places.length() == 0 ? "" : ", ")
                        .append(e.getClassName().substring("clipwitness.".length()))
                        .append(':')
                        .append(e.getLineNumber());
            }
        }
        return places.toString();
    }

    private String trace(String software) {
        StringWriter text = new StringWriter();
        try (PrintWriter lines = new PrintWriter(text)) {
            lines.println(software + ", Java " + Runtime.version());
            fault.printStackTrace(lines);
        }
        return text.toString();
    }
}
