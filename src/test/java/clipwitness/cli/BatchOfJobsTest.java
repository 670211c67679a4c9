package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.JobFolder;
import clipwitness.fixture.KeyStoreFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many jobs in one call: their summary, what is left as it is, and how much is said. */
class BatchOfJobsTest {
    @TempDir
    private Path temp;

    private Path week;
    private Path results;
    private StringWriter out;
    private StringWriter err;

    @BeforeEach
    void twoJobs() throws IOException {
        week = temp.resolve("week");
        results = temp.resolve("out");
        JobFolder.unchanged(week.resolve("a & <b>"), "T-1");
        JobFolder.quieter(week.resolve("nested/c"), "T-2");
    }

    @Test
    void manyJobsGetASummaryBesideTheirReports() throws IOException {
        Files.createDirectories(week.resolve("d"));
        Files.writeString(week.resolve("d/job.yaml"), "report: {}\n");
        assertThat(run("report", week, "--out", results)).isEqualTo(2);
        assertThat(names(results)).contains("T-1.pdf", "T-2.pdf", "summary.csv", "summary.html");
        assertThat(Files.readString(results.resolve("summary.html")))
                .contains("Summary of 3 jobs", "1 with a verdict fail, 1 passed, 1 without a report")
                .contains("a &amp; &lt;b&gt;", "href=\"./T-1.pdf\"", "✗ <bdi>fail: after against before</bdi>");
        List<String> lines = Files.readAllLines(results.resolve("summary.csv"));
        assertThat(lines.get(1)).isEqualTo(week.resolve("a & <b>") + ",T-1,after,before,pass,,,,T-1.pdf,made");
        assertThat(lines.get(3)).startsWith(week.resolve("nested/c") + ",T-2,after,before,fail,level (1 of 2)");
        assertThat(out.toString()).endsWith(results.resolve("summary.html") + System.lineSeparator());
    }

    @Test
    void oneJobOrResultsInTheJobsHaveNoSummary() throws IOException {
        assertThat(run("report", week.resolve("nested"), "--out", results)).isEqualTo(1);
        assertThat(names(results)).containsExactly("T-2-results.csv", "T-2-results.json", "T-2.pdf");
        assertThat(run("report", week)).isEqualTo(1);
        assertThat(names(week)).containsExactly("a & <b>", "nested");
    }

    @Test
    void aSummaryOfSomebodyElseStaysAsItIs() throws IOException {
        Files.createDirectories(results);
        Files.writeString(results.resolve("summary.html"), "mine");
        assertThat(run("report", week, "--out", results)).isEqualTo(2);
        assertThat(results.resolve("summary.html")).hasContent("mine");
        assertThat(names(results)).contains("T-1.pdf", "T-2.pdf").doesNotContain("summary.csv");
        assertThat(err.toString())
                .isEqualToNormalizingNewlines(results.resolve("summary.html")
                        + ": a file that this program has not written has the name of a result, and is left as it is."
                        + " Name another place with --out, or move it away [place-taken]\n");
    }

    @Test
    void aReportThatWouldComeOutTheSameIsLeftAsItIs() throws IOException {
        assertThat(run("report", week, "--out", results, "--changed-only")).isEqualTo(1);
        age(results);
        assertThat(run("report", week, "--out", results, "--changed-only")).isEqualTo(1);
        assertThat(old(results)).contains("T-1.pdf", "T-2.pdf", "T-1-results.json", "T-2-results.csv");
        assertThat(out.toString())
                .contains("T-2: after against before: fail", "T-2: unchanged, the report of an earlier run stands")
                .contains("T-1      after pass (unchanged)");
        assertThat(Files.readString(results.resolve("summary.csv"))).contains("T-2.pdf,unchanged");
        assertThat(Files.readString(results.resolve("summary.html")))
                .contains("unchanged: the report of an earlier run stands");
    }

    @Test
    void whateverWouldChangeAReportHasItMadeAgain() throws IOException {
        Path job = week.resolve("nested/c");
        Path page = temp.resolve("page");
        copy(Path.of("report-templates/customer"), page);
        List<List<Object>> changes = List.of(
                List.of(),
                List.of("export"),
                List.of("--template", "bench"),
                List.of("--template", "bench", "--template", "customer"),
                List.of("--template", page),
                List.of("style", "--template", page),
                List.of("lost", "--template", page));
        for (List<Object> change : changes) {
            apply(change, job, page);
            Object[] options = change.stream()
                    .filter(c -> !List.of("export", "style", "lost").contains(c))
                    .toArray();
            assertThat(changed(job, options)).as("first run: " + change).isTrue();
            assertThat(changed(job, options)).as("second run: " + change).isFalse();
        }
    }

    @Test
    void aSignedReportIsLeftAsItIsWhereItCarriesTheSignatureOfTheKey() throws IOException {
        Path job = week.resolve("nested/c");
        Path password = Files.writeString(temp.resolve("password"), KeyStoreFile.PASSWORD);
        Path shop = KeyStoreFile.write(temp.resolve("shop.p12"), "RSA", "Invented shop");
        Path other = KeyStoreFile.write(temp.resolve("other.p12"), "RSA", "Invented shop");
        assertThat(changed(job)).isTrue();
        for (Path key : List.of(shop, other)) {
            Object[] sign = {"--sign", key, "--sign-password-file", password};
            assertThat(changed(job, sign)).as("first run with " + key).isTrue();
            assertThat(changed(job, sign)).as("second run with " + key).isFalse();
        }
        assertThat(changed(job)).as("not to be signed").isFalse();
    }

    @Test
    void whatEarlierRunsLeftBesideTheResultsIsNamed() throws IOException {
        Path job = week.resolve("nested/c");
        run("report", job, "--template", "customer", "--template", "bench");
        Files.writeString(job.resolve("report/T-2-fault.txt"), "clipwitness 0.0.1, Java 17\n");
        Files.writeString(job.resolve("report/mine.txt"), "mine");
        run("report", job);
        assertThat(err.toString())
                .contains("Warning: " + job.resolve("report")
                        + ": T-2-bench.pdf and T-2-fault.txt are of an earlier run and not of this one. Move away what you want"
                        + " to keep, and delete the rest [left-over]")
                .doesNotContain("mine.txt");
        run("report", week, "--out", results);
        assertThat(err.toString()).doesNotContain(results.toString());
        Path sheet = job.resolve("job.yaml");
        Files.writeString(sheet, Files.readString(sheet).replace("T-2", "T-20"));
        run("report", week, "--out", results);
        assertThat(err.toString())
                .contains("Warning: " + results
                        + ": T-2-results.csv, T-2-results.json and T-2.pdf are of an earlier run and not of this one.");
    }

    private void apply(List<Object> change, Path job, Path page) throws IOException {
        if (change.contains("export")) {
            Files.writeString(job.resolve("after-0.csv"), Files.readString(job.resolve("after-0.csv")) + "\n");
        }
        if (change.contains("style")) {
            Files.writeString(page.resolve("report.css"), Files.readString(page.resolve("report.css")) + "\n");
        }
        if (change.contains("lost")) {
            Files.delete(job.resolve("report/T-2-results.csv"));
        }
    }

    /** Whether a run writes the report of a job. */
    private boolean changed(Path job, Object... options) throws IOException {
        Path folder = job.resolve("report");
        if (Files.exists(folder)) {
            age(folder);
        }
        Object[] args = Stream.concat(Stream.of("report", job, "--changed-only"), Stream.of(options))
                .toArray();
        assertThat(run(args)).isEqualTo(1);
        return !old(folder).contains("T-2.pdf");
    }

    @Test
    void quietSaysNothingButWhatWentWrong() throws IOException {
        assertThat(run("report", week, "--out", results, "--quiet")).isEqualTo(1);
        assertThat(out.toString() + err).isEmpty();
        Files.delete(week.resolve("nested/c/after-0.csv"));
        assertThat(run("report", week, "--out", results, "--quiet")).isEqualTo(2);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString().lines()).singleElement().asString().contains("after-0.csv");
    }

    @Test
    void verboseSaysEachStep() {
        assertThat(run("report", week.resolve("nested/c"), "--out", results, "--verbose"))
                .isEqualTo(1);
        assertThat(err.toString().lines())
                .containsExactly(
                        week.resolve("nested/c") + ": reading and measuring",
                        week.resolve("nested/c") + ": comparing",
                        week.resolve("nested/c") + ": making the pages",
                        week.resolve("nested/c") + ": writing");
        assertThat(run("report", week, "--quiet", "--verbose")).isEqualTo(2);
        assertThat(err.toString()).contains("--quiet and --verbose contradict each other");
    }

    @Test
    void twoRunsAtOnceIntoOneFolderLeaveOneWholeSet() throws IOException {
        CompletableFuture<Integer> other = CompletableFuture.supplyAsync(
                () -> new Clipwitness(silent(), silent()).run("report", week.toString(), "--out", results.toString()));
        assertThat(run("report", week, "--out", results)).isEqualTo(1);
        assertThat(other.join()).isEqualTo(1);
        assertThat(names(results))
                .containsExactly(
                        "T-1-results.csv",
                        "T-1-results.json",
                        "T-1.pdf",
                        "T-2-results.csv",
                        "T-2-results.json",
                        "T-2.pdf",
                        "summary.csv",
                        "summary.html");
    }

    private static PrintWriter silent() {
        return new PrintWriter(new StringWriter());
    }

    private int run(Object... args) {
        out = new StringWriter();
        err = new StringWriter();
        String[] texts = Stream.of(args).map(Object::toString).toArray(String[]::new);
        return new Clipwitness(new PrintWriter(out, true), new PrintWriter(err, true)).run(texts);
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        for (String name : names(from)) {
            Files.copy(from.resolve(name), to.resolve(name));
        }
    }

    private static void age(Path folder) throws IOException {
        for (String name : names(folder)) {
            Files.setLastModifiedTime(folder.resolve(name), FileTime.fromMillis(0));
        }
    }

    /** The files that were written before {@link #age}. */
    private static List<String> old(Path folder) throws IOException {
        return names(folder).stream()
                .filter(n -> folder.resolve(n).toFile().lastModified() == 0)
                .toList();
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }
}
