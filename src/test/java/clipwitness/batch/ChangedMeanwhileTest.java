package clipwitness.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.fault.InputException;
import clipwitness.fault.Problem;
import clipwitness.fixture.JobFolder;
import clipwitness.job.read.JobReader;
import clipwitness.reading.Progress;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A digest is of the bytes that were measured: an input that does not stay as it was while the report is made is named. */
class ChangedMeanwhileTest {
    private static final String CHANGED = "after-0.csv: the file was changed while it was read."
            + " Leave the folder alone while the program reads it, then run it again";
    private static final String LOST = "after-0.csv: the file was there at first and was lost meanwhile."
            + " Leave the folder alone while the program reads it, then run it again";

    @TempDir
    private Path temp;

    private Path job;
    private Path export;

    /** Something that happens to a file. */
    private interface Accident {
        void happen() throws IOException;
    }

    @BeforeEach
    void makeJob() throws IOException {
        JobFolder folder = JobFolder.unchanged(temp.resolve("job"), "T-1");
        folder.write("captures.csv", """
                file,state,kind,gain
                before-0.csv,before,waveform,0
                after-0.csv,after,waveform,0
                """);
        job = folder.path();
        export = job.resolve("after-0.csv");
    }

    @Test
    void anExportOfTheSameSizeAndTimeWithOneOtherDigitIsFound() {
        assertThat(whileItIsRead(() -> {
                    FileTime time = Files.getLastModifiedTime(export);
                    byte[] bytes = Files.readAllBytes(export);
                    int digit = new String(bytes, StandardCharsets.US_ASCII).lastIndexOf(".0");
                    bytes[digit + 1] = '9';
                    Files.write(export, bytes);
                    Files.setLastModifiedTime(export, time);
                }))
                .containsExactly(CHANGED);
    }

    @Test
    void anExportThatBecomesShorterOrLongerIsFound() throws IOException {
        byte[] whole = Files.readAllBytes(export);
        assertThat(whileItIsRead(() -> Files.write(export, new byte[0]))).containsExactly(CHANGED);
        Files.write(export, whole);
        assertThat(whileItIsRead(() -> Files.writeString(export, "\n", StandardOpenOption.APPEND)))
                .containsExactly(CHANGED);
    }

    @Test
    void anExportInWhosePlaceAnotherIsMovedIsFound() {
        assertThat(whileItIsRead(() -> Files.move(
                        Files.copy(job.resolve("before-0.csv"), job.resolve("x")),
                        export,
                        StandardCopyOption.REPLACE_EXISTING)))
                .containsExactly(CHANGED);
    }

    @Test
    void anExportThatIsDeletedIsLost() {
        assertThat(whileItIsRead(() -> Files.delete(export))).containsExactly(LOST);
    }

    @Test
    void sheetAndTableAreDigestedAndAttachedAsTheyWereRead() throws IOException {
        Path still = temp.resolve("still");
        assertThat(problems(run(still, Progress.NONE))).isEmpty();
        Path moving = temp.resolve("moving");
        assertThat(problems(run(moving, onExpect(() -> {
                    for (String name : List.of("job.yaml", "captures.csv")) {
                        Files.writeString(job.resolve(name), "# another\n", StandardOpenOption.APPEND);
                    }
                }))))
                .isEmpty();
        for (String name : List.of("T-1.pdf", "T-1-results.json", "T-1-results.csv")) {
            assertThat(moving.resolve(name)).hasSameBinaryContentAs(still.resolve(name));
        }
    }

    @Test
    void aPhotoThatIsAnotherWhenItIsPrintedIsFound() throws Exception {
        Path photo = job.resolve("board.png");
        ImageIO.write(new BufferedImage(2, 2, BufferedImage.TYPE_INT_RGB), "png", photo.toFile());
        Files.writeString(
                job.resolve("job.yaml"), "photos: [{file: board.png, caption: A board}]\n", StandardOpenOption.APPEND);
        Inputs inputs = Inputs.of(JobReader.readWhole(job), List.of());
        inputs.requireSamePictures();
        ImageIO.write(new BufferedImage(3, 3, BufferedImage.TYPE_INT_RGB), "png", photo.toFile());
        assertThatThrownBy(inputs::requireSamePictures)
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("board.png: the file was changed while it was read");
        Files.delete(photo);
        assertThatThrownBy(inputs::requireSamePictures)
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("board.png: the file was there at first and was lost meanwhile");
    }

    /** The accident happens each time that a part of an export has been read; only the second export is hit. */
    private List<String> whileItIsRead(Accident accident) {
        Progress progress = new Progress() {
            private boolean happened;

            @Override
            public void expect(long bytes) {
                // the accident comes later
            }

            @Override
            public synchronized void advance(long bytes) {
                if (!happened) {
                    happened = true;
                    run(accident);
                }
            }
        };
        try {
            Files.writeString(job.resolve("captures.csv"), """
                    file,state,kind,gain
                    after-0.csv,after,waveform,0
                    """);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return problems(run(temp.resolve("out"), progress));
    }

    private static Progress onExpect(Accident accident) {
        return new Progress() {
            @Override
            public void expect(long bytes) {
                run(accident);
            }

            @Override
            public void advance(long bytes) {
                // it has happened
            }
        };
    }

    private static void run(Accident accident) {
        try {
            accident.happen();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private JobOutcome run(Path out, Progress progress) {
        ReportOptions options = new ReportOptions(Optional.of(out), List.of(), "clipwitness 1.2.3");
        return new Batch(options, (outcome, place, all) -> {}, progress)
                .run(List.of(job))
                .get(0);
    }

    private static List<String> problems(JobOutcome outcome) {
        return outcome instanceof JobOutcome.Failed failed
                ? failed.problems().stream().map(Problem::message).toList()
                : List.of();
    }
}
