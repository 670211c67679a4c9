package clipwitness.batch;

import clipwitness.capture.Origin;
import clipwitness.capture.Problem;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;

/** Why a report could not be written, in words for whoever chose the folder. */
final class Unwritten {
    private Unwritten() {}

    static Problem problem(Path out, IOException fault) {
        return new Problem(
                Origin.of(out.toString()),
                "the report could not be written: " + reason(fault),
                "Choose another folder with --out; an earlier report is as it was");
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
