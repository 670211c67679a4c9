package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.Installed;
import clipwitness.fixture.Installed.Run;
import clipwitness.fixture.JobFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher, in a folder whose name has everything that a shell takes for something else. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {
    @TempDir
    private Path temp;

    private Installed home;

    @BeforeEach
    void install() throws IOException {
        home = Installed.in(temp.resolve("a b ü # & % ' $x"));
    }

    private Run run(Path program, Map<String, String> environment, String... args) throws Exception {
        return home.run(program, environment, args);
    }

    private Run launch(String... args) throws Exception {
        return run(home.file("bin/clipwitness"), Map.of(), args);
    }

    @Test
    void aJobInAFolderOfTheSameKindIsReported() throws Exception {
        Path job = JobFolder.unchanged(home.file("job ä & %"), "T-1").path();
        Run run = launch("report", job.toString());
        assertThat(run.printed()).contains("T-1: after against before: pass");
        assertThat(run.status()).isZero();
    }

    @Test
    void itIsFoundByWayOfALink() throws Exception {
        Path link = Files.createSymbolicLink(temp.resolve("cw"), home.file("bin/clipwitness"));
        assertThat(run(link, Map.of(), "--version").printed()).isEqualTo("clipwitness development\n");
    }

    @Test
    void optionsOfJavaComeFromTheEnvironment() throws Exception {
        Run run = run(home.file("bin/clipwitness"), Map.of("CLIPWITNESS_OPTS", "-Xmx64m -showversion"), "--version");
        assertThat(run.printed()).contains("clipwitness development").hasLineCount(4);
    }

    @Test
    void withoutJavaItSaysWhatToInstall() throws Exception {
        Run run = run(home.file("bin/clipwitness"), Map.of("CLIPWITNESS_JAVA", "", "PATH", "/nowhere"), "--version");
        assertThat(run.printed()).contains("Java 17 or later was not found");
        assertThat(run.status()).isEqualTo(2);
    }

    @Test
    void anArchiveThatDoesNotFitIsLeftOut() throws Exception {
        for (String kind : List.of("jsa", "aot")) {
            Files.writeString(home.file("lib/clipwitness." + kind), "no archive");
            Files.writeString(home.file("lib/prepared"), Installed.JAVA + "\n" + kind + "\n");
            assertThat(launch("--version")).isEqualTo(new Run(0, "clipwitness development\n"));
        }
    }

    @Test
    void whatWasPreparedForAnotherJavaIsLeftOut() throws Exception {
        Files.writeString(home.file("lib/prepared"), "/another/java\naot\n");
        assertThat(launch("--version")).isEqualTo(new Run(0, "clipwitness development\n"));
    }

    @Test
    void aJavaThatCrashesOnTheArchiveLeavesNone() throws Exception {
        Path java = Files.writeString(temp.resolve("java"), "#!/bin/sh\nexit 134\n");
        assertThat(java.toFile().setExecutable(true)).isTrue();
        Run run = run(home.file("bin/prepare"), Map.of("CLIPWITNESS_JAVA", java.toString()));
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.printed()).contains("Clipwitness works without it").hasLineCount(1);
        assertThat(home.file("lib")).isDirectoryContaining("glob:**/clipwitness.jar");
        assertThat(home.file("lib").toFile().list()).hasSize(1);
    }
}
