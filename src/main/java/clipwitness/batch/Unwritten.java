package clipwitness.batch;

import clipwitness.fault.Origin;
import clipwitness.fault.Problem;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;

/** Why a report or a page could not be written, in words for whoever chose the place. */
public final class Unwritten {
    private Unwritten() {}

    /**
     * The message.
     *
     * @param out   place that was chosen with {@code --out}
     * @param fault what the system said
     */
    public static Problem problem(Path out, IOException fault) {
        return new Problem(
                Origin.of(out.toString()),
                "could not be written: " + reason(fault),
                "Choose another place with --out; what stood there before is as it was");
    }

    private static String reason(IOException fault) {
        if (fault instanceof FileAlreadyExistsException e) {
            return e.getFile() + " is a file, not a folder";
        }
        if (fault instanceof AccessDeniedException e) {
            return "this user may not write " + e.getFile();
        }
        if (fault instanceof FileSystemException e && e.getReason() != null) {
            return e.getFile() + ": " + e.getReason();
        }
        return String.valueOf(fault.getMessage());
    }
}
