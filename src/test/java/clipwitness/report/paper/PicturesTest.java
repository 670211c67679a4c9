package clipwitness.report.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class PicturesTest {
    private static byte[] encoded(int width, int height, String format) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, x < width / 2 ? 0xFF0000 : 0x0000FF);
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, format, bytes);
        return bytes.toByteArray();
    }

    /** A JPEG with an Exif segment: little-endian TIFF, one entry, Orientation, type SHORT, and a secret behind it. */
    private static byte[] withExif(byte[] jpeg, int orientation) {
        byte[] exif = ("\u00FF\u00E1\0&Exif\0\0II*\0\u0008\0\0\0\u0001\0\u0012\u0001\u0003\0\u0001\0\0\0"
                        + (char) orientation + "\0\0\0SECRET..")
                .getBytes(StandardCharsets.ISO_8859_1);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(jpeg, 0, 2);
        bytes.write(exif, 0, exif.length);
        bytes.write(jpeg, 2, jpeg.length - 2);
        return bytes.toByteArray();
    }

    private static BufferedImage printed(byte[] picture) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(Pictures.forPrint(picture).orElseThrow()));
    }

    @Test
    void anUprightPictureKeepsItsPixelsAndLosesTheCamerasNotes() throws IOException {
        byte[] jpeg = encoded(40, 20, "jpeg");
        assertThat(Pictures.forPrint(withExif(jpeg, 1)).orElseThrow()).isEqualTo(jpeg);
    }

    @Test
    void aPictureTakenOnItsSideIsSetUpright() throws IOException {
        BufferedImage upright = printed(withExif(encoded(40, 20, "jpeg"), 6));
        assertThat(upright.getWidth()).isEqualTo(20);
        assertThat(upright.getHeight()).isEqualTo(40);
        assertThat(upright.getRGB(10, 5) & 0xFF0000).isGreaterThan(0xC00000); // the red left half is now the top
        assertThat(upright.getRGB(10, 35) & 0xFF).isGreaterThan(0xC0);
    }

    @Test
    void aLargePictureIsScaledToPrintResolution() throws IOException {
        BufferedImage small = printed(encoded(3200, 1000, "jpeg"));
        assertThat(small.getWidth()).isEqualTo(1600);
        assertThat(small.getHeight()).isEqualTo(500);
    }

    @Test
    void aLargePngStaysAPng() throws IOException {
        byte[] small = Pictures.forPrint(encoded(1000, 3200, "png")).orElseThrow();
        assertThat(small).startsWith(0x89, 'P', 'N', 'G');
        assertThat(ImageIO.read(new ByteArrayInputStream(small)).getHeight()).isEqualTo(1600);
    }

    @Test
    void scalingTakesTheMeanOfThePixels() {
        BufferedImage image = new BufferedImage(2, 2, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, 0x100000);
        image.setRGB(1, 1, 0x300008);
        assertThat(Downscale.to(1, image).getRGB(0, 0) & 0xFFFFFF).isEqualTo(0x100002);
    }

    @Test
    void whatIsNoPictureCannotBePrinted() {
        assertThat(Pictures.forPrint(new byte[] {1, 2, 3})).isEmpty();
        assertThat(Pictures.forPrint("%PDF-1.7".getBytes(StandardCharsets.US_ASCII)))
                .isEmpty();
    }

    @Test
    void halfAPictureCannotBePrinted() throws IOException {
        for (String format : new String[] {"png", "jpeg"}) {
            byte[] whole = encoded(400, 200, format);
            assertThat(Pictures.forPrint(whole)).isPresent();
            assertThat(Pictures.forPrint(Arrays.copyOf(whole, whole.length / 2)))
                    .isEmpty();
        }
    }

    @Test
    void aDamagedJpegCannotBePrinted() {
        assertThat(Pictures.forPrint(new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE1, 0, 1, 0}))
                .isEmpty();
    }
}
