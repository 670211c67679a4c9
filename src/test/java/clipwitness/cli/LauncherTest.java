package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.JobFolder;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher, in a folder whose name has everything that a shell takes for something else. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {
    private static final String JAVA =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();

    @TempDir
    private Path temp;

    private Path home;

    /** What a run printed, both streams, and its exit status. */
    private record Run(int status, String printed) {}

    @BeforeEach
    void install() throws IOException {
        home = Files.createDirectories(temp.resolve("a b ü # & % ' $x"));
        Files.createDirectory(home.resolve("bin"));
        Files.createDirectory(home.resolve("lib"));
        for (String script : List.of("clipwitness", "prepare")) {
            Files.copy(Path.of("src/main/dist/bin", script), home.resolve("bin").resolve(script));
            assertThat(home.resolve("bin").resolve(script).toFile().setExecutable(true))
                    .isTrue();
        }
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(Attributes.Name.CLASS_PATH, classPath());
        new JarOutputStream(Files.newOutputStream(home.resolve("lib/clipwitness.jar")), manifest).close();
    }

    private static String classPath() {
        return Arrays.stream(MainTest.classPath().split(File.pathSeparator))
                .map(p -> Path.of(p).toUri().toString())
                .collect(Collectors.joining(" "));
    }

    private Run run(Path program, Map<String, String> environment, String... args) throws Exception {
        List<String> command = new ArrayList<>(List.of(program.toString()));
        command.addAll(List.of(args));
        ProcessBuilder process = new ProcessBuilder(command).redirectErrorStream(true);
        process.environment()
                .keySet()
                .removeAll(List.of("JAVA_HOME", "CLIPWITNESS_OPTS", "JAVA_TOOL_OPTIONS", "JDK_JAVA_OPTIONS"));
        process.environment().put("CLIPWITNESS_JAVA", JAVA);
        process.environment().putAll(environment);
        process.redirectOutput(temp.resolve("printed").toFile());
        int status = process.start().waitFor();
        return new Run(status, Files.readString(temp.resolve("printed")));
    }

    private Run launch(String... args) throws Exception {
        return run(home.resolve("bin/clipwitness"), Map.of(), args);
    }

    @Test
    void aJobInAFolderOfTheSameKindIsReported() throws Exception {
        Path job = JobFolder.unchanged(home.resolve("job ä & %"), "T-1").path();
        Run run = launch("report", job.toString());
        assertThat(run.printed()).contains("T-1: after against before: pass");
        assertThat(run.status()).isZero();
    }

    @Test
    void itIsFoundByWayOfALink() throws Exception {
        Path link = Files.createSymbolicLink(temp.resolve("cw"), home.resolve("bin/clipwitness"));
        assertThat(run(link, Map.of(), "--version").printed()).isEqualTo("clipwitness development\n");
    }

    @Test
    void optionsOfJavaComeFromTheEnvironment() throws Exception {
        Run run = run(home.resolve("bin/clipwitness"), Map.of("CLIPWITNESS_OPTS", "-Xmx64m -showversion"), "--version");
        assertThat(run.printed()).contains("clipwitness development").hasLineCount(4);
    }

    @Test
    void withoutJavaItSaysWhatToInstall() throws Exception {
        Run run = run(home.resolve("bin/clipwitness"), Map.of("CLIPWITNESS_JAVA", "", "PATH", "/nowhere"), "--version");
        assertThat(run.printed()).contains("Java 17 or later was not found");
        assertThat(run.status()).isEqualTo(2);
    }

    @Test
    void anArchiveThatDoesNotFitIsLeftOut() throws Exception {
        for (String kind : List.of("jsa", "aot")) {
            Files.writeString(home.resolve("lib/clipwitness." + kind), "no archive");
            Files.writeString(home.resolve("lib/prepared"), JAVA + "\n" + kind + "\n");
            assertThat(launch("--version")).isEqualTo(new Run(0, "clipwitness development\n"));
        }
    }

    @Test
    void whatWasPreparedForAnotherJavaIsLeftOut() throws Exception {
        Files.writeString(home.resolve("lib/prepared"), "/another/java\naot\n");
        assertThat(launch("--version")).isEqualTo(new Run(0, "clipwitness development\n"));
    }

    @Test
    void aJavaThatCrashesOnTheArchiveLeavesNone() throws Exception {
        Path java = Files.writeString(temp.resolve("java"), "#!/bin/sh\nexit 134\n");
        assertThat(java.toFile().setExecutable(true)).isTrue();
        Run run = run(home.resolve("bin/prepare"), Map.of("CLIPWITNESS_JAVA", java.toString()));
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.printed()).contains("Clipwitness works without it").hasLineCount(1);
        assertThat(home.resolve("lib")).isDirectoryContaining("glob:**/clipwitness.jar");
        assertThat(home.resolve("lib").toFile().list()).hasSize(1);
    }
}
