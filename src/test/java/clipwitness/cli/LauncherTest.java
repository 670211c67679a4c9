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
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
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

    /** As a timed job starts it: no language is set, and Java alone could not name the folder. */
    @Test
    void withoutALanguageUmlautsAreNamedAllTheSame() throws Exception {
        Path job = JobFolder.unchanged(home.file("job ä"), "T-2").path();
        Map<String, String> none = Map.of("LC_ALL", "", "LC_CTYPE", "", "LANG", "");
        Run run = run(home.file("bin/clipwitness"), none, "report", job.toString());
        assertThat(run.printed()).contains("T-2: after against before: pass");
        assertThat(run.status()).isZero();
    }

    @Test
    void aFolderThatJavaTakesForAnArchiveIsNamed() throws Exception {
        Installed wrong = Installed.in(temp.resolve("new!"));
        Run run = wrong.run(wrong.file("bin/clipwitness"), Map.of(), "--version");
        assertThat(run.printed()).contains("exclamation mark").hasLineCount(1);
        assertThat(run.status()).isEqualTo(2);
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

    /** It was not tried on Windows: at least it starts Java as the other does, and has the line ends that labels of cmd need. */
    @Test
    void theLauncherForWindowsGivesJavaTheSameOptions() throws Exception {
        String windows = Files.readString(Path.of("src/main/dist/bin/clipwitness.bat"));
        assertThat(options(windows)).isEqualTo(options(Files.readString(Path.of("src/main/dist/bin/clipwitness"))));
        assertThat(windows.replace("\r\n", "")).doesNotContain("\n", "\r");
        assertThat(windows).contains("exit /b 2", "exit /b %ERRORLEVEL%");
    }

    /** Options of Java; an archive of classes is made and used by the other launcher alone. */
    private static Set<String> options(String script) {
        return Pattern.compile("-X[\\w:+=.-]+")
                .matcher(script)
                .results()
                .map(MatchResult::group)
                .filter(o -> !o.startsWith("-XX:AOTCache") && !o.startsWith("-XX:SharedArchiveFile"))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
