package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.JobFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadyCommandTest {
    @TempDir
    private Path temp;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void aJobWhoseLaterCapturesDoNotExistYetIsLookedAt() throws IOException {
        JobFolder job = beforeOnly();
        assertThat(run("ready", job.path())).isEqualTo(0);
        assertThat(out.toString())
                .startsWith("Quantity       Where")
                .contains("To do at the bench, most important first:\n  1. Before the repair: no setting was")
                .endsWith(
                        "Good enough: wherever these captures are compared, a change as large as its limit would show.\n");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void theJsonHasTheKeysOfTheContract() throws IOException {
        assertThat(run("ready", "--json", beforeOnly().path())).isEqualTo(0);
        assertThat(out.toString())
                .startsWith("""
                        {
                          "sufficient" : true,
                          "items" : [ {
                            "quantity" : "level",
                            "gainPercent" : 0.0,
                            "frequency" : 1000.0,
                            "level" : 0.1,
                            "setting" : null,
                            "limit" : 0.5,
                            "smallestChange" : 0.0""")
                .contains("""
                            "unit" : "dB",
                            "sufficient" : true,
                            "remedy" : null
                        """)
                .containsPattern("\"missing\" : \\[ \\{\\s+\"code\" : \"no-replicate\",\\s+\"text\" : \"");
    }

    @Test
    void aTightLimitIsNotYetMet() throws IOException {
        JobFolder job = beforeOnly();
        Files.writeString(
                job.path().resolve("job.yaml"),
                Files.readString(job.path().resolve("job.yaml")) + "limits: {level: 0.00001 dB}\n");
        assertThat(run("ready", job.path())).isEqualTo(1);
        assertThat(out.toString())
                .contains(
                        "Not good enough yet: a change of level as large as its limit would not show everywhere. After the work"
                                + " nobody can capture this again.");
    }

    /** 0.00001 dB is a hundred-thousandth of what noise allows here, so that the remedy is beyond a longer record. */
    @Test
    void whatWouldHelpIsSaidOnceAQuantity() throws IOException {
        JobFolder job = beforeOnly();
        Files.writeString(
                job.path().resolve("job.yaml"),
                Files.readString(job.path().resolve("job.yaml")) + "limits: {level: 0.00001 dB}\n");
        run("ready", job.path());
        assertThat(out.toString())
                .containsOnlyOnce(
                        "What would help, as far as the unit stays what it is (a change near its limit needs more):\n"
                                + "  level: No practicable number of captures would show");
    }

    @Test
    void aJobWithoutCapturesHasNothingToCompareWith() throws IOException {
        JobFolder job = beforeOnly();
        job.write("captures.csv", "file,state,kind,gain\n");
        assertThat(run("ready", job.path())).isEqualTo(1);
        assertThat(out.toString())
                .endsWith(
                        "Not good enough: there is nothing yet that a capture after the work could be compared with.\n");
    }

    @Test
    void aSheetInThePlaceOfItsFolderIsNamed() throws IOException {
        Path sheet = beforeOnly().path().resolve("job.yaml");
        assertThat(run("ready", sheet)).isEqualTo(2);
        assertThat(err.toString()).startsWith(sheet + ": is a file, not a job folder. Name the folder that holds ");
    }

    @Test
    void aBrokenSheetEndsWithStatus2() throws IOException {
        JobFolder job = beforeOnly();
        job.write("job.yaml", "report: {number: T-1}\n");
        assertThat(run("ready", job.path())).isEqualTo(2);
        assertThat(err.toString()).contains("job.yaml, line 1, report");
        assertThat(out.toString()).isEmpty();
    }

    private JobFolder beforeOnly() throws IOException {
        JobFolder job = JobFolder.unchanged(temp.resolve("job"), "T-1");
        job.write("captures.csv", """
                file,state,kind,gain
                before-0.csv,before,waveform,0
                before-100.csv,before,waveform,100
                """);
        return job;
    }

    private int run(Object... args) {
        String[] texts = Stream.of(args).map(Object::toString).toArray(String[]::new);
        return new Clipwitness(new PrintWriter(out, true), new PrintWriter(err, true)).run(texts);
    }
}
