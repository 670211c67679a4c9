package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import clipwitness.batch.Batch;
import clipwitness.batch.JobOutcome;
import clipwitness.batch.ReportOptions;
import clipwitness.batch.Stage;
import clipwitness.fixture.Installed;
import clipwitness.fixture.JobFolder;
import clipwitness.reading.Progress;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Jobs whose results cannot be written, or whose folders vanish: one sentence each, and the other jobs go on. */
class BatchThatCannotWriteTest {
    @TempDir
    private Path temp;

    private Path week;
    private StringWriter out;
    private StringWriter err;

    @BeforeEach
    void twoJobs() throws IOException {
        week = temp.resolve("week");
        JobFolder.unchanged(week.resolve("a"), "T-1");
        JobFolder.quieter(week.resolve("b"), "T-2");
    }

    @Test
    void aFileInThePlaceOfAFolderOfResultsIsNamedAndTheOtherJobIsReported() throws IOException {
        Path file = Files.writeString(week.resolve("a/report"), "mine");
        assertThat(run("report", week)).isEqualTo(2);
        assertThat(err.toString().lines())
                .containsExactly(
                        file + ": could not be written: " + file
                                + " is a file, not a folder. Choose another place with --out; what stood there before is as it was [not-written]");
        assertThat(out.toString())
                .contains("T-2: after against before: fail", "not reported: 1 problem, named above")
                .containsPattern("T-2 +after fail");
        assertThat(week.resolve("b/report/T-2.pdf")).exists();
        assertThat(file).hasContent("mine");
    }

    @Test
    void aFileInThePlaceOfTheFolderOfAllResultsIsNamedForEachJobAndForTheSummary() throws IOException {
        Path file = Files.writeString(temp.resolve("out"), "mine");
        assertThat(run("report", week, "--out", file)).isEqualTo(2);
        assertThat(err.toString().lines()).hasSize(3).allMatch(l -> l.contains(file + " is a file, not a folder. "));
        assertThat(out.toString()).doesNotContain("summary.html");
        assertThat(file).hasContent("mine");
    }

    /** Nothing longer than 1,024 bytes can be written, so not even the lock of a folder: as on a disk that is full. */
    @Test
    void aDiskThatTakesNothingIsSaidOnceAJobAndNothingIsLeftThere() throws Exception {
        Path results = Files.createDirectories(temp.resolve("out"));
        Process run = limited("report", week.toString(), "--out", results.toString());
        String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(run.waitFor(2, TimeUnit.MINUTES)).isTrue();
        assumeThat(said).doesNotContain("ulimit"); // a shell without such limits
        assertThat(run.exitValue()).as(said).isEqualTo(2);
        assertThat(said.lines().filter(l -> l.contains(results + ": could not be written: " + results)))
                .as(said)
                .hasSize(3)
                .allMatch(l -> l.contains("Choose another place with --out; what stood there before is as it was"));
        assertThat(said.lines().filter(l -> l.contains("not reported: 1 problem, named above")))
                .as(said)
                .hasSize(4); // as each ends, and in the closing table
        assertThat(said).doesNotContain("Exception", "a fault of the program");
        assertThat(names(results)).isEmpty();
    }

    @Test
    void aJobFolderThatVanishesBetweenTheJobsIsNamedAndTheOtherJobIsReported() {
        List<JobOutcome> outcomes = batch(temp.resolve("out"), new Batch.Listener() {
            @Override
            public void planned(int all) {
                remove(week.resolve("a"));
            }

            @Override
            public void ended(JobOutcome outcome, int place, int all) {}
        });
        assertThat(outcomes.get(0))
                .isInstanceOfSatisfying(
                        JobOutcome.Failed.class,
                        f -> assertThat(f.problems())
                                .isNotEmpty()
                                .allMatch(p ->
                                        p.message().contains("the file was there at first and was lost meanwhile")));
        assertThat(outcomes.get(1)).isInstanceOf(JobOutcome.Reported.class);
        assertThat(temp.resolve("out/T-2.pdf")).exists();
    }

    @Test
    void aFolderOfResultsThatVanishesBeforeTheWritingIsMadeAgain() throws IOException {
        remove(week.resolve("b"));
        Path results = temp.resolve("out");
        assertThat(run("report", week, "--out", results)).isZero();
        List<JobOutcome> outcomes = batch(results, new Batch.Listener() {
            @Override
            public void doing(Path folder, Stage stage) {
                if (stage == Stage.WRITING) {
                    remove(results);
                }
            }

            @Override
            public void ended(JobOutcome outcome, int place, int all) {}
        });
        assertThat(outcomes).singleElement().isInstanceOf(JobOutcome.Reported.class);
        assertThat(names(results)).containsExactly("T-1-results.csv", "T-1-results.json", "T-1.pdf");
    }

    private List<JobOutcome> batch(Path results, Batch.Listener listener) {
        ReportOptions options = new ReportOptions(Optional.of(results), List.of(), "clipwitness test");
        return new Batch(options, listener, Progress.NONE).run(List.of(week));
    }

    private Process limited(String... args) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> command = new ArrayList<>(
                List.of("sh", "-c", "ulimit -f 1 && exec \"$@\"", "sh", java, "-XX:TieredStopAtLevel=1"));
        command.addAll(List.of("-XX:+UseSerialGC", "-Xmx512m", "-XX:-UsePerfData"));
        command.addAll(List.of("-cp", Installed.classPath(), "clipwitness.cli.Main"));
        command.addAll(List.of(args));
        return new ProcessBuilder(command).redirectErrorStream(true).start();
    }

    private int run(Object... args) {
        out = new StringWriter();
        err = new StringWriter();
        String[] texts = Stream.of(args).map(Object::toString).toArray(String[]::new);
        return new Clipwitness(new PrintWriter(out, true), new PrintWriter(err, true)).run(texts);
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    private static void remove(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
