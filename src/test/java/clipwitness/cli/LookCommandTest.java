package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.JsonObject;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LookCommandTest {
    private static final String COUNTS = "CH1\n5\n-250\n7\n9\n";

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void whatTheFileLeavesOpenIsSettledByTheOptions() throws IOException {
        Path file = write("counts.csv", COUNTS);
        assertThat(run("look", file, "--interval", "2 us", "--unit", "A", "--scale", "20 mA"))
                .isEqualTo(0);
        assertThat(out.toString().replace('\u00a0', ' '))
                .startsWith(file + ": record over time, 4 samples, one every 2.00000 µs (500.0 kHz), 8.000 µs long\n"
                        + "  CH1   −5.000 A to 180.0 mA\n");
        assertThat(err.toString()).isEmpty();
    }

    /** The counts 5, -250, 7 and 9 at 20 mA each. */
    @Test
    void asJsonAChannelHasItsSmallestAndItsLargestValueInAmperes() throws IOException {
        Path file = write("counts.csv", COUNTS);
        assertThat(run("look", "--json", file, "--interval", "2 us", "--unit", "A", "--scale", "20 mA"))
                .isEqualTo(0);
        JsonObject look = JsonObject.read(out.toString().getBytes(StandardCharsets.UTF_8));
        look.holds("file", file.toString());
        look.holds("kind", "time");
        look.holds("samples", 4);
        look.holds("sampleInterval", 2e-6);
        look.list("channels", List.of("CH1"), (channel, name) -> {
            channel.holds("name", name);
            channel.holds("unit", "A");
            channel.holds("minimum", -5.0);
            channel.holds("maximum", 9 * 0.02);
        });
    }

    @Test
    void oneFileThatCannotBeReadDoesNotStopTheOthers() throws IOException {
        Path good = write("good.csv", "time (s),CH1 (V)\n0,1\n1,2\n2,3\n");
        Path gone = folder.resolve("gone.csv");
        assertThat(run("look", gone, good)).isEqualTo(2);
        assertThat(err.toString())
                .isEqualToNormalizingNewlines(
                        gone + ": there is no such file. Check the path and the name's ending [no-such-file]\n");
        assertThat(out.toString()).startsWith(good + ": record over time, 3 samples");
    }

    @Test
    void aMissingIntervalIsAskedForByOptionAndColumn() throws IOException {
        Path file = write("counts.csv", COUNTS);
        assertThat(run("look", "--json", file)).isEqualTo(2);
        assertThat(err.toString())
                .isEqualToNormalizingNewlines(file + ": there is neither a time column nor a sample interval or rate."
                        + " State it in the column interval of captures.csv, or with the option --interval of look. Of a"
                        + " traced curve, write V and A into the headings of its columns [no-interval]\n");
        assertThat(out.toString().strip()).isEqualTo("[ ]");
    }

    @Test
    void aUnitThatIsNoneIsRefused() throws IOException {
        assertThat(run("look", write("counts.csv", COUNTS), "--unit", "W")).isEqualTo(2);
        assertThat(err.toString().lines().findFirst())
                .contains(
                        "--unit must be V or A, with a prefix where there is one, or a unit for each column, as mV,mA, but is W [wrong-call]");
    }

    @Test
    void anIntervalThatIsNoTimeOrNotAboveZeroIsRefused() throws IOException {
        Path file = write("counts.csv", COUNTS);
        assertThat(run("look", file, "--interval", "soon")).isEqualTo(2);
        assertThat(run("look", file, "--interval", "2")).isEqualTo(2);
        assertThat(run("look", file, "--interval", "0 s")).isEqualTo(2);
        assertThat(run("look", file, "--scale", "-1")).isEqualTo(2);
        assertThat(err.toString().lines().filter(l -> l.startsWith("--")))
                .containsExactly(
                        "--interval: 'soon' is not a time. Write a number, a space and the unit, for example 2 µs [wrong-call]",
                        "--interval: '2' has no unit. Write a number, a space and the unit, for example 2 µs [wrong-call]",
                        "--interval must be above 0 but is 0 s [wrong-call]",
                        "--scale must be above 0 but is -1 [wrong-call]");
    }

    @Test
    void aFileIsNeeded() {
        assertThat(run("look")).isEqualTo(2);
        assertThat(err.toString().lines().findFirst()).contains("Missing required parameter: 'FILE' [wrong-call]");
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private int run(Object... args) {
        String[] texts = Stream.of(args).map(Object::toString).toArray(String[]::new);
        return new Clipwitness(new PrintWriter(out, true), new PrintWriter(err, true)).run(texts);
    }
}
