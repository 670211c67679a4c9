package clipwitness.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clipwitness.fault.InputException;
import clipwitness.fixture.ExampleJob;
import clipwitness.fixture.ExampleSheet;
import clipwitness.job.Photo;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.cos.COSName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PhotosTest {
    @TempDir
    private Path folder;

    private ExampleSheet sheet(Photo... photos) throws IOException {
        Files.createDirectories(folder.resolve("photos"));
        ImageIO.write(
                new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB),
                "jpeg",
                folder.resolve("photos/board.jpg").toFile());
        return ExampleSheet.plain().withPhotos(folder, List.of(photos));
    }

    @Test
    void photosArePrintedWithCaptionAndState() throws Exception {
        ExampleSheet sheet = sheet(
                new Photo("photos/board.jpg", "The board, solder side", Optional.of("original")),
                new Photo("photos/board.jpg", "The switch", Optional.empty()));
        try (Rendered report = Rendered.of(ExampleJob.with(sheet).results(), "customer")) {
            assertThat(report.text())
                    .contains("The board, solder side · After, original clippers")
                    .contains("The switch");
            int images = 0;
            for (var page : report.document().getPages()) {
                for (COSName name : page.getResources().getXObjectNames()) {
                    images += page.getResources().isImageXObject(name) ? 1 : 0;
                }
            }
            assertThat(images).isEqualTo(2);
        }
    }

    /** A4 has room for two in a row: the state before the work on the left, one after it on the right, whatever the order on the sheet. */
    @Test
    void beforeAndAfterStandSideBySide() throws Exception {
        ExampleSheet sheet = sheet(
                new Photo("photos/board.jpg", "top", Optional.empty()),
                new Photo("photos/board.jpg", "solder before", Optional.of("received")),
                new Photo("photos/board.jpg", "switch before", Optional.of("received")),
                new Photo("photos/board.jpg", "solder after", Optional.of("original")),
                new Photo("photos/board.jpg", "switch after", Optional.of("new")));
        try (Rendered report = Rendered.of(ExampleJob.with(sheet).results(), "customer")) {
            assertThat(report.text())
                    .containsSubsequence("solder before", "solder after", "switch before", "switch after", "top ");
        }
    }

    @Test
    void aPhotoThatBreaksOffIsAnErrorThatNamesIt() throws Exception {
        ExampleSheet sheet = sheet(new Photo("photos/half.jpg", "", Optional.empty()));
        byte[] whole = Files.readAllBytes(folder.resolve("photos/board.jpg"));
        Files.write(folder.resolve("photos/half.jpg"), Arrays.copyOf(whole, whole.length / 2));
        assertThatThrownBy(() -> Rendered.bytes(ExampleJob.with(sheet).results(), "customer"))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("photos/half.jpg: this picture breaks off: the end of the file is missing.");
    }

    @Test
    void aPhotoThatIsNotThereIsAnError() throws Exception {
        ExampleSheet sheet = sheet(new Photo("photos/gone.jpg", "", Optional.empty()));
        assertThatThrownBy(() -> Rendered.bytes(ExampleJob.with(sheet).results(), "customer"))
                .isInstanceOf(InputException.class)
                .hasMessage(
                        "photos/gone.jpg: this picture is not there. Save it again as a whole JPEG or PNG file inside the job folder, in"
                                + " the colours of a screen, at most some thousand pixels wide");
    }

    @Test
    void aPhotoOutsideTheJobFolderIsNotRead() throws Exception {
        Path outside = Files.createTempFile("outside", ".jpg");
        ImageIO.write(new BufferedImage(6, 4, BufferedImage.TYPE_INT_RGB), "jpeg", outside.toFile());
        ExampleSheet sheet = sheet(new Photo(outside.toString(), "", Optional.empty()));
        assertThatThrownBy(() -> Rendered.bytes(ExampleJob.with(sheet).results(), "customer"))
                .isInstanceOf(InputException.class);
        Files.delete(outside);
    }
}
