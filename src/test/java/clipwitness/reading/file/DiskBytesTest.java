package clipwitness.reading.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bytes of a file: no more than there are, where they are asked for. */
class DiskBytesTest {
    @TempDir
    private Path folder;

    @Test
    void bytesComeFromThePlaceAskedForAndEndWithTheFile() throws IOException {
        Path file = Files.write(folder.resolve("x"), new byte[] {1, 2, 3, 4, 5});
        byte[] into = new byte[6];
        try (DiskBytes disk = DiskBytes.of(file, Seen.NOTHING)) {
            assertThat(disk.size()).isEqualTo(5);
            assertThat(disk.read(1, into, 2, 2)).isEqualTo(2);
            assertThat(into).containsExactly(0, 0, 2, 3, 0, 0);
            assertThat(disk.read(3, into, 0, 6)).isEqualTo(2);
            assertThat(into).containsExactly(4, 5, 2, 3, 0, 0);
            assertThat(disk.read(5, into, 0, 6)).isZero();
            assertThat(disk.read(9, into, 0, 6)).isZero();
        }
    }

    @Test
    void aFileThatIsCutWhileItIsReadFailsAsAFileDoes() throws IOException {
        Path file = Files.write(folder.resolve("x"), new byte[100_000]);
        try (DiskBytes disk = DiskBytes.of(file, Seen.NOTHING)) {
            try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
                channel.truncate(10);
            }
            assertThatThrownBy(() -> disk.read(0, new byte[100_000], 0, 100_000))
                    .isInstanceOf(IOException.class);
        }
    }
}
