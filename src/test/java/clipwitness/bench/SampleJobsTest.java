package clipwitness.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** sample-captures holds what the generator writes; only the job sheets are written by hand. */
class SampleJobsTest {
    private static final Path SAMPLES = Path.of("sample-captures");
    private static final long MOST_BYTES = 3_000_000;
    private static final int SAME = -1;
    private static final Map<String, JobFiles> JOBS = SampleJobs.all();

    static Set<String> jobs() {
        return JOBS.keySet();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void committedFilesAreTheGenerators(String job) throws IOException {
        JobFiles folder = JOBS.get(job);
        assertThat(committed(job)).isEqualTo(folder.paths().stream().sorted().toList());
        for (String path : folder.paths()) {
            byte[] committed = Files.readAllBytes(SAMPLES.resolve(job).resolve(path));
            byte[] generated = folder.bytes(path);
            int mismatch = path.endsWith(".png") // its compression may differ from one library to the next
                    ? Arrays.mismatch(pixels(committed), pixels(generated))
                    : Arrays.mismatch(committed, generated);
            assertThat(mismatch).as("first difference in " + path).isEqualTo(SAME);
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void aJobStaysUnderThreeMegabytes(String job) {
        JobFiles folder = JOBS.get(job);
        assertThat(folder.paths().stream()
                        .mapToLong(path -> folder.bytes(path).length)
                        .sum())
                .isLessThan(MOST_BYTES);
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void everySheetSaysThatItIsInvented(String job) throws IOException {
        assertThat(Files.readString(SAMPLES.resolve(job).resolve("job.yaml")))
                .contains("# An invented job")
                .contains("Invented job, waves computed.");
    }

    @Test
    void twoRunsGiveTheSameBytes() {
        JobFiles again = LiftedJoint.folder();
        for (String path : again.paths()) {
            assertThat(again.bytes(path))
                    .as(path)
                    .isEqualTo(JOBS.get("lifted-joint").bytes(path));
        }
    }

    private static List<String> committed(String job) throws IOException {
        Path folder = SAMPLES.resolve(job);
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> IntStream.range(0, folder.relativize(file).getNameCount())
                            .mapToObj(i -> folder.relativize(file).getName(i).toString())
                            .collect(Collectors.joining("/")))
                    .filter(path -> !path.equals("job.yaml") && !path.startsWith("report/"))
                    .sorted()
                    .toList();
        }
    }

    private static int[] pixels(byte[] png) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }
}
