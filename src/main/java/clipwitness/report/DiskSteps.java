package clipwitness.report;

import java.io.IOException;
import java.nio.file.Path;

/** The steps in which documents come into a folder. Each may fail, and after each the program may be ended. */
interface DiskSteps {
    /** Writes a file that is not there, or over one that is, and flushes it to the disk. */
    void write(Path file, byte[] content) throws IOException;

    /** Keeps what a file holds under a second name, whatever takes the first name afterwards. */
    void keep(Path file, Path second) throws IOException;

    /** Gives a file another name, in one step, in place of what has that name. */
    void move(Path file, Path name) throws IOException;

    /** Bytes that may still be written into a folder; many where the system does not say. */
    long room(Path folder);

    /** Removes a file if it is there. */
    void delete(Path file) throws IOException;
}
