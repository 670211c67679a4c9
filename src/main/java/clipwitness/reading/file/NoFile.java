package clipwitness.reading.file;

import clipwitness.fault.ErrorCode;
import clipwitness.fault.InputException;
import clipwitness.fault.Origin;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Refuses what has the name of a file and is none: folders, pipes, sockets, devices. */
final class NoFile {
    private static final int KIND = 0xf000;
    private static final int PIPE = 0x1000;

    private NoFile() {}

    static void refuse(Path path, String name) throws InputException {
        Origin where = Origin.of(name);
        if (Files.isDirectory(path)) {
            throw new InputException(
                    ErrorCode.NOT_A_FILE, where, "this is a folder, not a file", "Name the exports in it one by one");
        }
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            throw new InputException(
                    ErrorCode.NOT_A_FILE,
                    where,
                    isPipe(path)
                            ? "this is no ordinary file but a pipe, which cannot be read"
                            : "this is no ordinary file",
                    "Save it as a file, and name that");
        }
    }

    /** Whether a path is a pipe (POSIX, sys/stat.h, S_IFIFO), as far as the system tells. */
    private static boolean isPipe(Path path) {
        try {
            return path.getFileSystem().supportedFileAttributeViews().contains("unix")
                    && ((Integer) Files.getAttribute(path, "unix:mode") & KIND) == PIPE;
        } catch (IOException e) {
            return false;
        }
    }
}
