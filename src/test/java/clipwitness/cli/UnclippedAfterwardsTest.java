package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.JobFolder;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A unit that clipped and clips no more, as with clippers that were left out: noise alone makes its distortion, which may come out as 0. */
class UnclippedAfterwardsTest {
    @TempDir
    private Path temp;

    @Test
    void aDistortionOfZeroIsTold() throws IOException {
        boolean zero = false;
        for (int seed = 4; seed < 12; seed++) {
            JobFolder job = JobFolder.unchanged(temp.resolve("job" + seed), "T-1");
            job.capture("after-100.csv", 100, 0.01, seed);
            StringWriter messages = new StringWriter();
            int status = new Clipwitness(new PrintWriter(new StringWriter()), new PrintWriter(messages))
                    .run("report", job.path().toString());
            assertThat(status).as(messages.toString()).isEqualTo(1);
            String json = Files.readString(job.path().resolve("report/T-1-results.json"));
            zero |= Pattern.compile("\"thd\" : \\{\\s+\"value\" : 0.0,")
                    .matcher(json)
                    .find();
            assertThat(json).contains("It hardly clips any more");
        }
        assertThat(zero).as("one of them came out as 0").isTrue();
    }
}
