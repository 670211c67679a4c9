package clipwitness.reading.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;

/**
 * What changes where a file is changed or replaced.
 *
 * @param size     bytes
 * @param modified when it was last written
 * @param key      which file has the name, where the system says so
 */
record FileState(long size, FileTime modified, String key) {
    static FileState of(Path path) throws IOException {
        BasicFileAttributes now = Files.readAttributes(path, BasicFileAttributes.class);
        return new FileState(now.size(), now.lastModifiedTime(), String.valueOf(now.fileKey()));
    }

    /** Whether nothing has changed. Written out, as the comparison that a record brings is made at run time, which takes as long as reading a short file. */
    boolean isStill(FileState now) {
        return size == now.size && modified.equals(now.modified) && key.equals(now.key);
    }
}
