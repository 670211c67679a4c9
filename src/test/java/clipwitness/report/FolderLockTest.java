package clipwitness.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The lock of a folder, seen from another process. */
class FolderLockTest {
    private static final int FREE = 10;
    private static final int TAKEN = 11;

    @TempDir
    private Path folder;

    /** Another process, which tries to take the lock. */
    static final class Other {
        private Other() {}

        public static void main(String[] args) throws IOException {
            try (FileChannel channel = FileChannel.open(Path.of(args[0]), StandardOpenOption.WRITE)) {
                System.exit(channel.tryLock(1 << 10, 1, false) == null ? TAKEN : FREE);
            }
        }
    }

    @Test
    void anotherProcessFindsTheLockTaken() throws Exception {
        FolderLock lock = FolderLock.of(folder);
        try {
            String java = ProcessHandle.current().info().command().orElseThrow();
            String classes = Path.of(FolderLockTest.class
                            .getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toString();
            Process other = new ProcessBuilder(
                            java,
                            "-cp",
                            classes,
                            Other.class.getName(),
                            folder.resolve(".clipwitness-lock").toString())
                    .inheritIO()
                    .start();
            assertThat(other.waitFor()).isEqualTo(TAKEN);
        } finally {
            lock.close();
        }
        assertThat(folder).isEmptyDirectory();
    }
}
