package clipwitness.cli;

import clipwitness.batch.Verification;
import java.nio.file.Path;
import java.util.Optional;

/** What {@code verify} prints: a line a statement, and the answer below. */
final class VerifyText {
    private VerifyText() {}

    static String of(Path report, Optional<Path> job, Verification verification) {
        StringBuilder text = new StringBuilder();
        for (Verification.Statement s : verification.statements()) {
            text.append(mark(s.kind())).append(s.text()).append('\n');
        }
        return text.append(report)
                .append(": ")
                .append(answer(job, verification))
                .append('\n')
                .toString();
    }

    /** Words of one width, so that the sentences begin below each other. */
    private static String mark(Verification.Kind kind) {
        return switch (kind) {
            case HOLDS -> "holds    ";
            case DIFFERS -> "DIFFERS  ";
            case OPEN -> "unknown  ";
            case NOTE -> "note     ";
        };
    }

    private static String answer(Optional<Path> job, Verification verification) {
        if (verification.differ()) {
            return job.isPresent() ? "does not match its data." : "does not agree with itself.";
        }
        if (verification.isOpen()) {
            return "whether it matches its data cannot be said.";
        }
        return job.isPresent()
                ? "matches its data."
                : "agrees with itself. Name the job folder as well to hold it against the data.";
    }
}
