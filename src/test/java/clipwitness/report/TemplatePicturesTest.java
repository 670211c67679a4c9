package clipwitness.report;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.fixture.ExampleJob;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures of a template, as files and in the page itself, are printed from their pixels alone, as photos are. */
class TemplatePicturesTest {
    @TempDir
    private Path folder;

    @Test
    void whatStandsBesideThePixelsOfATemplatesPictureIsNotPrinted() throws Exception {
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB), "jpeg", jpeg);
        jpeg.writeBytes("SECRET".getBytes(StandardCharsets.US_ASCII));
        Files.write(folder.resolve("a.jpg"), jpeg.toByteArray());
        String inline = Base64.getEncoder().encodeToString(jpeg.toByteArray());
        Files.writeString(
                folder.resolve("report.html"),
                "<html lang=\"en\"><head><title>t</title></head><body><p><img src=\"a.jpg\" alt=\"a\"/></p>"
                        + "<p><img src=\"data:image/jpeg;base64," + inline + "\" alt=\"b\"/></p></body></html>");
        byte[] pdf = Rendered.bytes(ExampleJob.good().results(), folder.toString());
        assertThat(new String(pdf, StandardCharsets.ISO_8859_1)).doesNotContain("SECRET");
        assertThat(pictures(pdf)).isEqualTo(2);
    }

    private static int pictures(byte[] pdf) throws Exception {
        int pictures = 0;
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDResources resources = document.getPage(0).getResources();
            for (COSName name : resources.getXObjectNames()) {
                pictures += resources.isImageXObject(name) ? 1 : 0;
            }
        }
        return pictures;
    }
}
