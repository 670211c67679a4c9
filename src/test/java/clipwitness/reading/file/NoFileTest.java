package clipwitness.reading.file;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.fault.InputException;
import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What has the name of a file and is none is refused before it is opened: opening a pipe would wait for ever. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class NoFileTest {
    @TempDir
    private Path folder;

    @Test
    void aPipeIsToBeSavedAsAFile() throws IOException, InterruptedException {
        Path pipe = folder.resolve("pipe");
        new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor();
        refused(
                pipe,
                "pipe: this is no ordinary file but a pipe, which cannot be read. Save it as a file, and name that");
    }

    @Test
    void aSocketAndADeviceAreNoOrdinaryFiles() throws IOException {
        Path socket = folder.resolve("s");
        try (ServerSocketChannel server = ServerSocketChannel.open(StandardProtocolFamily.UNIX)) {
            server.bind(UnixDomainSocketAddress.of(socket));
            refused(socket, "s: this is no ordinary file. Save it as a file, and name that");
        }
        refused(Path.of("/dev/null"), "null: this is no ordinary file. Save it as a file, and name that");
    }

    @Test
    void aFolderHasExportsInIt() {
        refused(folder, folder.getFileName() + ": this is a folder, not a file. Name the exports in it one by one");
    }

    @Test
    void aFileIsAFile() throws IOException {
        Path file = Files.writeString(folder.resolve("a.csv"), "1\n");
        assertThatCode(() -> NoFile.refuse(file, "a.csv")).doesNotThrowAnyException();
    }

    private static void refused(Path path, String message) {
        assertThatThrownBy(() -> NoFile.refuse(path, path.getFileName().toString()))
                .isInstanceOf(InputException.class)
                .hasMessage(message);
    }
}
