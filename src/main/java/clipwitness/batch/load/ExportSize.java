package clipwitness.batch.load;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Size of an export, for those who wait for it. */
public final class ExportSize {
    private ExportSize() {}

    /** Size in bytes; 0 where there is no such file, which its reader will say. */
    public static long of(Path file) {
        try {
            return Files.size(file);
        } catch (IOException e) {
            return 0;
        }
    }
}
