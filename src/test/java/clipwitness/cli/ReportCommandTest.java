package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.JobFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportCommandTest {
    @TempDir
    private Path temp;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void aJobThatPassesEndsWithStatus0AndThreeFiles() throws IOException {
        Path job = JobFolder.unchanged(temp.resolve("job"), "T-1").path();
        assertThat(run("report", job, "--out", temp.resolve("out"))).isEqualTo(0);
        assertThat(names(temp.resolve("out"))).containsExactly("T-1-results.csv", "T-1-results.json", "T-1.pdf");
        assertThat(out.toString()).contains("T-1: after against before: pass");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void aJobThatFailsEndsWithStatus1AndItsReport() throws IOException {
        Path job = JobFolder.quieter(temp.resolve("job"), "T-1").path();
        assertThat(run("report", job)).isEqualTo(1);
        assertThat(names(job.resolve("report"))).contains("T-1.pdf");
        assertThat(out.toString()).contains("T-1: after against before: fail");
    }

    @Test
    void anotherTemplateMakesAnotherPdf() throws IOException {
        Path job = JobFolder.unchanged(temp.resolve("job"), "T-1").path();
        assertThat(run("report", job, "--template", "customer", "--template", "bench"))
                .isEqualTo(0);
        assertThat(names(job.resolve("report")))
                .containsExactly("T-1-bench.pdf", "T-1-results.csv", "T-1-results.json", "T-1.pdf");
    }

    @Test
    void theSameInputsGiveTheSameBytes() throws IOException {
        Path job = JobFolder.unchanged(temp.resolve("job"), "T-1").path();
        assertThat(run("report", job, "--out", temp.resolve("first"))).isEqualTo(0);
        assertThat(run("report", job, "--out", temp.resolve("second"))).isEqualTo(0);
        assertThat(names(temp.resolve("first"))).hasSize(3);
        for (String name : names(temp.resolve("first"))) {
            assertThat(temp.resolve("first").resolve(name))
                    .hasSameBinaryContentAs(temp.resolve("second").resolve(name));
        }
    }

    @Test
    void theSameInputsGiveTheSameBytesInEveryCountryAndTimeZone() throws IOException {
        Path job = JobFolder.unchanged(temp.resolve("job"), "T-1").path();
        assertThat(run("report", job, "--out", temp.resolve("first"))).isEqualTo(0);
        assertThat(names(temp.resolve("first"))).hasSize(3);
        Locale country = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            for (List<String> place : List.of(
                    List.of("tr-TR", "Europe/Istanbul"),
                    List.of("ar-EG-u-nu-arab", "Africa/Cairo"),
                    List.of("de-DE", "Pacific/Kiritimati"))) {
                Locale.setDefault(Locale.forLanguageTag(place.get(0)));
                TimeZone.setDefault(TimeZone.getTimeZone(place.get(1)));
                assertThat(run("report", job, "--out", temp.resolve(place.get(0))))
                        .isEqualTo(0);
                for (String name : names(temp.resolve("first"))) {
                    assertThat(temp.resolve(place.get(0)).resolve(name))
                            .as(place + " " + name)
                            .hasSameBinaryContentAs(temp.resolve("first").resolve(name));
                }
            }
        } finally {
            Locale.setDefault(country);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void oneJobThatFailsToBeReadNeverStopsTheNextAndATableClosesTheBatch() throws IOException {
        Path good = JobFolder.unchanged(temp.resolve("week/a-good"), "T-1").path();
        JobFolder broken = JobFolder.unchanged(temp.resolve("week/b-broken"), "T-2");
        broken.write("before-0.csv", "Time (s),IN (V),OUT (V)\n0,1,2\n1e-6,abc,2\n2e-6,1,2\n3e-6,1,2\n");
        JobFolder.quieter(temp.resolve("week/c-quieter"), "T-3");
        assertThat(run("report", temp.resolve("week"))).isEqualTo(2);
        assertThat(names(good.resolve("report"))).contains("T-1.pdf");
        assertThat(temp.resolve("week/b-broken/report")).doesNotExist();
        assertThat(names(temp.resolve("week/c-quieter/report"))).contains("T-3.pdf");
        assertThat(err.toString()).contains("before-0.csv, line 3");
        List<String> table = out.toString().lines().toList();
        assertThat(table.get(table.size() - 4)).matches("Job +Number +Ended");
        assertThat(table.get(table.size() - 3)).endsWith("T-1      after pass");
        assertThat(table.get(table.size() - 2)).endsWith("–        not reported: 1 problem, named above");
        assertThat(table.get(table.size() - 1)).endsWith("T-3      after fail");
    }

    @Test
    void eachJobOfABatchIsToldAsItEnds() throws IOException {
        JobFolder.unchanged(temp.resolve("week/a"), "T-1");
        JobFolder.unchanged(temp.resolve("week/b"), "T-2").write("captures.csv", "");
        JobFolder.unchanged(temp.resolve("week/c"), "T-3");
        List<String> early = new ArrayList<>();
        Writer watching = new StringWriter() {
            @Override
            public void flush() {
                if (!toString().contains("T-3")) { // jobs run side by side, and are told in their order
                    early.add(toString());
                }
            }
        };
        new Clipwitness(new PrintWriter(watching), new PrintWriter(err, true))
                .run("report", temp.resolve("week").toString());
        assertThat(early)
                .last()
                .asString()
                .contains("T-1: after against before: pass", "T-1.pdf")
                .endsWith(temp.resolve("week/b") + ": not reported: 1 problem, named above" + System.lineSeparator());
    }

    @Test
    void anEarlierReportSurvivesAFailingRun() throws IOException {
        JobFolder job = JobFolder.unchanged(temp.resolve("job"), "T-1");
        assertThat(run("report", job.path())).isEqualTo(0);
        byte[] before = Files.readAllBytes(job.path().resolve("report/T-1.pdf"));
        Files.delete(job.path().resolve("after-100.csv"));
        assertThat(run("report", job.path())).isEqualTo(2);
        assertThat(Files.readAllBytes(job.path().resolve("report/T-1.pdf"))).isEqualTo(before);
        assertThat(err.toString()).contains("captures.csv, line 5").contains("after-100.csv");
    }

    @Test
    void twoJobsWithOneNumberAreRefusedByName() throws IOException {
        Path first = JobFolder.unchanged(temp.resolve("first"), "T-1").path();
        Path second = JobFolder.unchanged(temp.resolve("second"), "t-1").path();
        assertThat(run("report", first, second, "--out", temp.resolve("out"))).isEqualTo(2);
        assertThat(err.toString())
                .contains("job.yaml, report.number: the number t-1 is also that of " + first
                        + ". Give each job of one call a number of its own; upper and lower case are alike");
    }

    @Test
    void aFolderWithoutAJobSaysWhatAJobFolderHolds() throws IOException {
        Path empty = Files.createDirectories(temp.resolve("empty"));
        assertThat(run("report", empty)).isEqualTo(2);
        assertThat(err.toString())
                .isEqualToNormalizingNewlines(
                        empty + ": has no job.yaml, and no folder in it has one, at whatever depth."
                                + " A job folder holds job.yaml, captures.csv and the exports [no-job]\n");
    }

    @Test
    void aFileInsteadOfAFolderAndAMissingFolderAreNamed() throws IOException {
        Path file = Files.writeString(temp.resolve("job.yaml"), "x");
        assertThat(run("report", file, temp.resolve("gone"))).isEqualTo(2);
        assertThat(err.toString())
                .contains(file + ": is a file, not a job folder. Name the folder that holds job.yaml and captures.csv")
                .contains(temp.resolve("gone") + ": there is no such folder.");
    }

    @Test
    void wrongUsageEndsWithStatus2AndTheUsage() {
        assertThat(run("report")).isEqualTo(2);
        assertThat(err.toString()).contains("Missing required parameter: 'JOB'").contains("Usage: clipwitness report");
        assertThat(run()).isEqualTo(2);
        assertThat(run("--version")).isEqualTo(0);
    }

    @Test
    void anUnknownCommandIsNamedWithTheNearest() {
        assertThat(run("reprot", "job")).isEqualTo(2);
        assertThat(run("frobnicate")).isEqualTo(2);
        assertThat(err.toString().lines())
                .containsExactly(
                        "Unknown command 'reprot'. Did you mean report? Commands are report, look, draft, ready, pair, template and verify; --help says what they "
                                + "do. [wrong-call]",
                        "Unknown command 'frobnicate'. Commands are report, look, draft, ready, pair, template and verify; --help says what they do. [wrong-call]");
        assertThat(run("--verson")).isEqualTo(2);
        assertThat(err.toString()).contains("Unknown option: '--verson'");
    }

    @Test
    void aCharacterThatNoFontHasIsAWarningAndTheReportIsMade() throws IOException {
        JobFolder job = JobFolder.unchanged(temp.resolve("job"), "T-1");
        String sheet = Files.readString(job.path().resolve("job.yaml"));
        job.write("job.yaml", sheet.replace("Invented customer", "Ω, ł, 修理修"));
        assertThat(run("report", job.path())).isEqualTo(0);
        assertThat(err.toString())
                .isEqualToNormalizingNewlines("Warning: " + job.path().resolve("job.yaml")
                        + ", customer: no font of the report has 修 (U+4FEE), 理 (U+7406); the code is printed in place. "
                        + "Write it in Latin, Greek or Cyrillic letters [no-letters]\n");
        assertThat(job.path().resolve("report/T-1.pdf")).exists();
    }

    @Test
    void textFromRightToLeftIsAWarningAndTheReportIsMade() throws IOException {
        JobFolder job = JobFolder.unchanged(temp.resolve("job"), "T-1");
        String sheet = Files.readString(job.path().resolve("job.yaml"));
        job.write("job.yaml", sheet.replace("Invented customer", "A שם ب"));
        assertThat(run("report", job.path())).isEqualTo(0);
        assertThat(err.toString())
                .isEqualToNormalizingNewlines("Warning: " + job.path().resolve("job.yaml")
                        + ", customer: the report cannot set letters from right to left: ש (U+05E9), ם (U+05DD), ب (U+0628);"
                        + " the code is printed in place. Write it in Latin, Greek or Cyrillic letters [no-letters]\n");
        assertThat(job.path().resolve("report/T-1.pdf")).exists();
    }

    @Test
    void aDocumentOfMorePagesThanItMayHaveEndsWithStatus2AndTheOption() throws IOException {
        Path job = JobFolder.unchanged(temp.resolve("job"), "T-1").path();
        assertThat(run("report", job, "--template", "bench", "--pages", "2")).isEqualTo(2);
        assertThat(err.toString())
                .contains("built-in template bench, report.html: the document has more than 2 pages. ")
                .endsWith("a report that needs more pages gets them with --pages [page-budget]\n");
        assertThat(run("report", job, "--template", "bench", "--pages", "1")).isEqualTo(2);
        assertThat(err.toString()).contains(": the document has more than one page. ");
        assertThat(job.resolve("report")).doesNotExist();
    }

    @Test
    void aDocumentHasATimeAndAPageAtLeast() {
        assertThat(run("report", temp, "--page-time", "0")).isEqualTo(2);
        assertThat(err.toString()).startsWith("--page-time must be 1 or more but is 0");
        assertThat(run("report", temp, "--pages", "-1")).isEqualTo(2);
        assertThat(err.toString()).contains("--pages must be 1 or more but is -1");
    }

    private int run(Object... args) {
        String[] texts = Stream.of(args).map(Object::toString).toArray(String[]::new);
        return new Clipwitness(new PrintWriter(out, true), new PrintWriter(err, true)).run(texts);
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }
}
