package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fault.Problem;
import clipwitness.fixture.JobFolder;
import clipwitness.reading.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Before the first report of a call is made, it is known which are to be made and that none takes the place of another. */
class BatchPlanTest {
    @TempDir
    private Path temp;

    @Test
    void jobsWithOneNumberAreAllRefusedBeforeTheFirstIsMade() throws IOException {
        Path first = JobFolder.unchanged(temp.resolve("week/a"), "T-1").path();
        Path other = JobFolder.unchanged(temp.resolve("week/b"), "T-2").path();
        Path second = JobFolder.unchanged(temp.resolve("week/c"), "t-1").path();
        List<JobOutcome> outcomes = run(Optional.empty(), List.of(), temp.resolve("week"));
        assertThat(messages(outcomes.get(0)))
                .singleElement()
                .asString()
                .startsWith(first.resolve("job.yaml") + ", report.number: the number T-1 is also that of " + second);
        assertThat(messages(outcomes.get(2)))
                .singleElement()
                .asString()
                .startsWith(second.resolve("job.yaml") + ", report.number: the number t-1 is also that of " + first);
        assertThat(first.resolve("report")).doesNotExist();
        assertThat(other.resolve("report/T-2.pdf")).exists();
    }

    @Test
    void aNumberThatWithTheTemplateMakesTheFileOfAnotherJobIsRefused() throws IOException {
        JobFolder.unchanged(temp.resolve("week/a"), "T-1");
        JobFolder.unchanged(temp.resolve("week/b"), "T-1-bench");
        List<JobOutcome> outcomes =
                run(Optional.of(temp.resolve("out")), List.of("customer", "bench"), temp.resolve("week"));
        assertThat(messages(outcomes.get(0)))
                .singleElement()
                .asString()
                .contains("the report T-1 would write a file that T-1-bench in " + temp.resolve("week/b")
                        + " writes too");
        assertThat(temp.resolve("out")).doesNotExist();
    }

    @Test
    void twoTemplateFoldersOfOneNameAreRefused() throws IOException {
        Path job = JobFolder.unchanged(temp.resolve("job"), "T-1").path();
        for (String name : List.of("one/page", "two/Page")) {
            Files.writeString(Files.createDirectories(temp.resolve(name)).resolve("report.html"), "<html/>");
        }
        String second = temp.resolve("two/Page").toString();
        List<JobOutcome> outcomes = run(
                Optional.empty(), List.of("customer", temp.resolve("one/page").toString(), second), job);
        assertThat(messages(outcomes.get(0)))
                .containsExactly(second + ": two templates would write the same file T-1-Page.pdf."
                        + " Give each template folder a name of its own; upper and lower case are alike");
    }

    @Test
    void aJobThatIsNamedTwiceIsMadeOnce() throws IOException {
        Path job = JobFolder.unchanged(temp.resolve("week/a"), "T-1").path();
        assertThat(run(Optional.empty(), List.of(), job, temp.resolve("week"), job))
                .singleElement()
                .isInstanceOf(JobOutcome.Reported.class);
    }

    @Test
    void jobsAtAnyDepthAreMadeInTheOrderOfTheirPaths() throws IOException {
        JobFolder.unchanged(temp.resolve("year/2026/05/b"), "T-2");
        JobFolder.unchanged(temp.resolve("year/2026/05/a"), "T-1");
        JobFolder.unchanged(temp.resolve("year/2025"), "T-0");
        JobFolder.unchanged(temp.resolve("year/2025/within-a-job"), "T-9");
        Files.createSymbolicLink(temp.resolve("year/2026/round"), temp.resolve("year"));
        assertThat(run(Optional.empty(), List.of(), temp.resolve("year")))
                .allMatch(JobOutcome.Reported.class::isInstance)
                .extracting(o -> temp.resolve("year").relativize(o.folder()).toString())
                .containsExactly("2025", "2026/05/a", "2026/05/b");
    }

    @Test
    void whatLooksLikeAJobAndIsNotTakenIsNamed() throws IOException {
        JobFolder.unchanged(temp.resolve("week/a"), "T-1");
        write("week/b/job.yml");
        write("week/c/Job.yaml");
        Files.createDirectories(temp.resolve("week/d"));
        Files.createSymbolicLink(temp.resolve("week/d/job.yaml"), temp.resolve("gone"));
        Files.createSymbolicLink(temp.resolve("week/e"), temp.resolve("gone"));
        JobFolder.unchanged(temp.resolve("elsewhere/old"), "T-2");
        Files.createSymbolicLink(temp.resolve("week/f"), temp.resolve("elsewhere"));
        write("week/g/captures.csv");
        write("week/notes/read-me.txt");
        write("week/plan.txt");
        List<String> messages = new ArrayList<>();
        run(Optional.empty(), List.of(), temp.resolve("week")).forEach(o -> messages.addAll(messages(o)));
        Path week = temp.resolve("week");
        assertThat(messages)
                .containsExactly(
                        week.resolve("b") + ": is not taken as a job, because its sheet is called job.yml."
                                + " Rename it to job.yaml",
                        week.resolve("c") + ": is not taken as a job, because its sheet is called Job.yaml."
                                + " Rename it to job.yaml",
                        week.resolve("d/job.yaml") + ": is a link that leads nowhere."
                                + " Copy the job sheet into the job folder",
                        week.resolve("e") + ": is a link that leads nowhere."
                                + " Remove it, or let it lead to the job folder",
                        week.resolve("f") + ": the job folders in it are not taken, because it is a link: old."
                                + " Name the folder to which it leads",
                        week.resolve("g") + ": is not taken as a job, because it has a captures.csv but no job.yaml."
                                + " Write the job sheet; the README shows a first one");
    }

    @Test
    void aFolderOfResultsThatLeadsOutsideTheJobIsRefused() throws IOException {
        Path job = JobFolder.unchanged(temp.resolve("job"), "T-1").path();
        Path elsewhere = Files.createDirectories(temp.resolve("elsewhere"));
        Files.createSymbolicLink(job.resolve("report"), elsewhere);
        assertThat(messages(run(Optional.empty(), List.of(), job).get(0)))
                .containsExactly(job.resolve("report")
                        + ": the folder for the results is a link that leads outside the job folder."
                        + " Name the folder with --out, or remove the link");
        assertThat(elsewhere).isEmptyDirectory();
        Files.delete(elsewhere);
        assertThat(run(Optional.empty(), List.of(), job).get(0)).isInstanceOf(JobOutcome.Failed.class);
        assertThat(elsewhere).doesNotExist();
    }

    @Test
    void aTableThatLeadsOutsideTheJobIsRefused() throws IOException {
        Path job = JobFolder.unchanged(temp.resolve("job"), "T-1").path();
        Path table = Files.move(job.resolve("captures.csv"), temp.resolve("table.csv"));
        Files.createSymbolicLink(job.resolve("captures.csv"), table);
        assertThat(messages(run(Optional.empty(), List.of(), job).get(0)))
                .containsExactly("captures.csv: the file leads outside the job folder " + job
                        + " through a link. Copy it into the job folder");
    }

    @Test
    void anInputAmongTheResultsIsRefusedAndStaysAsItIs() throws IOException {
        JobFolder job = JobFolder.unchanged(temp.resolve("job"), "T-1");
        Path export = job.path().resolve("report/T-1-results.csv");
        Files.createDirectories(export.getParent());
        Files.move(job.path().resolve("after-0.csv"), export);
        byte[] before = Files.readAllBytes(export);
        job.write("captures.csv", """
                file,state,kind,gain
                before-0.csv,before,waveform,0
                report/T-1-results.csv,after,waveform,0
                """);
        assertThat(messages(run(Optional.empty(), List.of(), job.path()).get(0)))
                .containsExactly(
                        "captures.csv, line 3, file: 'report/T-1-results.csv' lies in the folder of the results,"
                                + " which is never read as input. Move it to another folder of the job");
        assertThat(export).hasBinaryContent(before);
    }

    @Test
    void anExportNamedLikeAResultInTheFolderOfTheResultsIsRefusedBeforeAnythingIsRead() throws IOException {
        JobFolder job = JobFolder.unchanged(temp.resolve("job"), "T-1");
        Files.createDirectories(job.path().resolve("captures"));
        Path export = job.path().resolve("captures/T-1-results.csv");
        Files.writeString(export, "no export at all");
        job.write("captures.csv", """
                file,state,kind,gain
                before-0.csv,before,waveform,0
                captures/T-1-results.csv,after,waveform,0
                """);
        assertThat(messages(run(Optional.of(job.path().resolve("captures")), List.of(), job.path())
                        .get(0)))
                .containsExactly(export + ": this input of the job has the name of a result,"
                        + " and is left as it is. Name another place with --out");
        assertThat(export).hasContent("no export at all");
    }

    private void write(String name) throws IOException {
        Files.createDirectories(temp.resolve(name).getParent());
        Files.writeString(temp.resolve(name), "x");
    }

    private static List<JobOutcome> run(Optional<Path> out, List<String> templates, Path... paths) {
        ReportOptions options = new ReportOptions(out, templates, "clipwitness 1.2.3");
        return new Batch(options, (outcome, place, all) -> {}, Progress.NONE).run(List.of(paths));
    }

    private static List<String> messages(JobOutcome outcome) {
        return outcome instanceof JobOutcome.Failed failed
                ? failed.problems().stream().map(Problem::message).toList()
                : List.of();
    }
}
