package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.JobFolder;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What cannot be printed is lost, and no exit status may say otherwise. */
class LostOutputTest {
    private static final String LOST = "standard output: not all that was to be printed could be written there."
            + " Is the disk full, or was the output closed? [not-written]\n";

    @TempDir
    private Path temp;

    @Test
    void everyCommandEndsWithStatus2WhereItsOutputIsLost() throws IOException {
        Path job = JobFolder.unchanged(temp.resolve("job"), "T-1").path();
        Path export = job.resolve("before-0.csv");
        Path trace = Path.of("sample-captures", "bass-drive-switch", "tracer", "D1.csv");
        lost("look", export);
        lost("look", "--json", export);
        lost("ready", job);
        lost("ready", "--json", job);
        lost("report", job, "--out", temp.resolve("out"));
        lost("pair", trace);
        lost("pair", "--json", trace);
        lost("--help");
        lost("report", "--help");
        lost("--version");
        assertThat(temp.resolve("out/T-1.pdf")).exists();
    }

    private static void lost(Object... args) {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("No space left on device");
            }
        };
        StringWriter err = new StringWriter();
        String[] texts = Stream.of(args).map(Object::toString).toArray(String[]::new);
        int status = new Clipwitness(new PrintWriter(full, false, StandardCharsets.UTF_8), new PrintWriter(err, true))
                .run(texts);
        assertThat(status).as(String.join(" ", texts)).isEqualTo(2);
        assertThat(err.toString()).as(String.join(" ", texts)).endsWith(LOST);
    }
}
