package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShortRunTest {
    private static final List<String> PROGRAM = List.of("report", "a job");

    @TempDir
    private Path folder;

    @Test
    void theSameCommandLineIsRunWithAFasterStart() {
        assertThat(ShortRun.command("/usr/bin/java", List.of("-Xmx512m", "-jar", "c.jar", "report", "a job"), PROGRAM))
                .hasValue(List.of(
                        "/usr/bin/java",
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-XX:MetaspaceSize=96m",
                        "-Dclipwitness.startedBy=" + ProcessHandle.current().pid(),
                        "-Xmx512m",
                        "-jar",
                        "c.jar",
                        "report",
                        "a job"));
    }

    @Test
    void optionsOfTheUsersOwnChoiceAreLeftAlone() {
        assertThat(ShortRun.command("java", List.of("-XX:+UseZGC", "-jar", "c.jar", "report", "a job"), PROGRAM))
                .isEmpty();
        assertThat(ShortRun.command("java", List.of("@options", "-jar", "c.jar", "report", "a job"), PROGRAM))
                .isEmpty();
    }

    @Test
    void aCommandLineThatTheSystemCutOffIsLeftAlone() {
        assertThat(ShortRun.command("java", List.of("-jar", "c.jar", "report", "a j"), PROGRAM))
                .isEmpty();
        assertThat(ShortRun.command("java", PROGRAM, PROGRAM)).isEmpty();
    }

    @Test
    void onlyReportsOfSmallFoldersAreShort() throws IOException {
        Files.writeString(folder.resolve("job.yaml"), "work: none\n");
        assertThat(ShortRun.isShort("report", folder.toString())).isTrue();
        assertThat(ShortRun.isShort("look", folder.toString())).isFalse();
        assertThat(ShortRun.isShort()).isFalse();
        try (RandomAccessFile deep =
                new RandomAccessFile(folder.resolve("deep.csv").toFile(), "rw")) {
            deep.setLength(100L << 20);
        }
        assertThat(ShortRun.isShort("report", folder.toString())).isFalse();
    }
}
