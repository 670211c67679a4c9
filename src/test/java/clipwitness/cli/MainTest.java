package clipwitness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.Installed;
import clipwitness.fixture.JobFolder;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MainTest {
    @TempDir
    private Path temp;

    /** A display that is named and is not there, and no folder for temporary files: a report with a photo needs neither. */
    @Test
    void aReportNeedsNoDisplayAndNoTemporaryFiles() throws Exception {
        JobFolder job = JobFolder.unchanged(temp.resolve("job"), "T-1");
        job.write(
                "job.yaml", Files.readString(job.path().resolve("job.yaml")) + "photos: [{file: a.png, caption: A}]\n");
        ImageIO.write(
                new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB),
                "png",
                job.path().resolve("a.png").toFile());
        assertThat(run(job.path(), job.path().resolve("report"))).isEqualTo(0);
        assertThat(temp.resolve("log")).isEmptyFile();
        assertThat(job.path().resolve("report/T-1.pdf")).exists();
    }

    /** Digits of another script, another calendar, a clock 45 minutes off the hour, letters of one byte: each changes what Java prints by default. */
    @Test
    void theSameFilesGiveTheSameBytesInAnyLocaleTimeZoneAndCharset() throws Exception {
        JobFolder job = JobFolder.unchanged(temp.resolve("job"), "T-1");
        job.write(
                "job.yaml",
                Files.readString(job.path().resolve("job.yaml")).replace("Invented customer", "Ελένη Größe"));
        Path here = temp.resolve("here");
        Path there = temp.resolve("there");
        Path elsewhere = temp.resolve("elsewhere");
        assertThat(run(job.path(), here)).isEqualTo(0);
        assertThat(run(
                        job.path(),
                        there,
                        "-Duser.language=th",
                        "-Duser.country=TH",
                        "-Duser.timezone=Asia/Kathmandu",
                        "-Dfile.encoding=ISO-8859-1"))
                .isEqualTo(0);
        assertThat(run(
                        job.path(),
                        elsewhere,
                        "-Duser.language=ar",
                        "-Duser.country=EG",
                        "-Duser.timezone=America/St_Johns",
                        "-Dfile.encoding=US-ASCII"))
                .isEqualTo(0);
        for (String name : List.of("T-1.pdf", "T-1-results.json", "T-1-results.csv")) {
            assertThat(there.resolve(name)).hasSameBinaryContentAs(here.resolve(name));
            assertThat(elsewhere.resolve(name)).hasSameBinaryContentAs(here.resolve(name));
        }
    }

    private int run(Path job, Path out, String... settings) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(List.of(settings));
        command.addAll(List.of(
                "-XX:TieredStopAtLevel=1",
                "-Djava.io.tmpdir=" + temp.resolve("nowhere"),
                "-cp",
                Installed.classPath(),
                Main.class.getName(),
                "report",
                job.toString(),
                "--out",
                out.toString()));
        ProcessBuilder process = new ProcessBuilder(command);
        process.environment().put("DISPLAY", ":77");
        process.redirectError(temp.resolve("log").toFile());
        process.redirectOutput(temp.resolve("out").toFile());
        return process.start().waitFor();
    }
}
