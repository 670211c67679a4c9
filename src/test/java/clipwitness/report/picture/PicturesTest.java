package clipwitness.report.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
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

    private static BufferedImage printed(byte[] picture) throws Exception {
        return ImageIO.read(new ByteArrayInputStream(Pictures.forPrint(picture)));
    }

    /** Bytes put into a file before a place. */
    private static byte[] inserted(byte[] file, int at, byte[] more) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(file, 0, at);
        bytes.write(more, 0, more.length);
        bytes.write(file, at, file.length - at);
        return bytes.toByteArray();
    }

    /** A segment that holds a secret (ITU-T T.81, B.1.1.4: marker, length, data). */
    private static byte[] segment(int marker, String before) {
        String data = before + "SECRET";
        return ("\u00FF" + (char) marker + "\0" + (char) (data.length() + 2) + data)
                .getBytes(StandardCharsets.ISO_8859_1);
    }

    private static void assertClean(byte[] picture) throws Exception {
        assertThat(new String(picture, StandardCharsets.ISO_8859_1)).contains("SECRET");
        byte[] printed = Pictures.forPrint(picture);
        assertThat(new String(printed, StandardCharsets.ISO_8859_1)).doesNotContain("SECRET");
        BufferedImage pixels = ImageIO.read(new ByteArrayInputStream(printed));
        assertThat(pixels.getRGB(5, 5) & 0xFF0000).isGreaterThan(0xE00000); // red on the left as before
    }

    /** Wherever in a file something stands beside the picture, nothing of it is printed. */
    @Test
    void nothingThatStandsBesideThePixelsReachesThePrint() throws Exception {
        byte[] jpeg = encoded(40, 20, "jpeg");
        byte[] secret = "SECRET".getBytes(StandardCharsets.US_ASCII);
        assertClean(withExif(jpeg, 1));
        assertClean(inserted(jpeg, jpeg.length, secret));
        assertClean(inserted(jpeg, 2, segment(0xE0, "JFXX\0")));
        assertClean(inserted(jpeg, 20, segment(0xE2, "ODD\0")));
        assertClean(inserted(jpeg, 20, segment(0xEE, "Odd\0")));
        assertClean(inserted(jpeg, 20, segment(0xFE, "")));
        assertClean(inserted(withExif(jpeg, 1), 2, new byte[] {(byte) 0xFF, (byte) 0xFF, (byte) 0xFF}));
        assertClean(inserted(encoded(40, 20, "png"), encoded(40, 20, "png").length, secret));
    }

    /** PNG third edition, 11.3.4.5: the chunk eXIf holds what in a JPEG stands behind "Exif". */
    @Test
    void aPngIsSetUprightAsItsCameraWasHeldAndKeepsNothingOfTheCamerasNotes() throws Exception {
        byte[] turned = withExifChunk(encoded(40, 20, "png"), 6);
        assertThat(new String(turned, StandardCharsets.ISO_8859_1)).contains("SECRET");
        assertThat(new String(Pictures.forPrint(turned), StandardCharsets.ISO_8859_1))
                .doesNotContain("SECRET", "eXIf");
        BufferedImage upright = printed(turned);
        assertThat(upright.getHeight()).isEqualTo(40);
        assertThat(upright.getRGB(5, 5)).isEqualTo(0xFFFF0000); // what was left is now above
        assertThat(upright.getRGB(5, 35)).isEqualTo(0xFF0000FF);
        assertThat(printed(withExifChunk(encoded(40, 20, "png"), 1)).getWidth()).isEqualTo(40);
    }

    @Test
    void aPngThatIsTurnedStaysTransparentWhereItIs() throws Exception {
        BufferedImage clear = new BufferedImage(40, 20, BufferedImage.TYPE_INT_ARGB);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(clear, "png", bytes);
        assertThat(printed(withExifChunk(bytes.toByteArray(), 3)).getRGB(5, 5)).isZero();
    }

    /** A PNG with a chunk of a camera behind its first one: length, type, data, check. */
    private static byte[] withExifChunk(byte[] png, int orientation) {
        byte[] data = ("MM\0*\0\0\0\u0008\0\u0001\u0001\u0012\0\u0003\0\0\0\u0001\0" + (char) orientation
                        + "\0\0SECRET..")
                .getBytes(StandardCharsets.ISO_8859_1);
        byte[] type = "eXIf".getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(type);
        check.update(data);
        byte[] chunk = ByteBuffer.allocate(12 + data.length)
                .putInt(data.length)
                .put(type)
                .put(data)
                .putInt((int) check.getValue())
                .array();
        return inserted(png, 8 + 25, chunk);
    }

    @Test
    void theCamerasNotesAreFoundBehindFillBytes() throws Exception {
        byte[] filled = inserted(withExif(encoded(40, 20, "jpeg"), 6), 2, new byte[] {(byte) 0xFF, (byte) 0xFF});
        assertThat(printed(filled).getHeight()).isEqualTo(40);
    }

    /** TIFF 6.0, section 2: offsets are unsigned numbers of 32 bits; one that leads out of the file means nothing. */
    @Test
    void anOffsetAtTheEndOf32BitsLeavesThePictureAsItIs() throws Exception {
        for (String offset : new String[] {"\u00FF\u00FF\u00FF\u007F", "\u00FE\u00FF\u00FF\u00FF", "%\0\0\0"}) {
            byte[] exif = ("\u00FF\u00E1\0\u0012Exif\0\0II*\0" + offset + "\0\0").getBytes(StandardCharsets.ISO_8859_1);
            assertThat(printed(inserted(encoded(40, 20, "jpeg"), 2, exif)).getWidth())
                    .isEqualTo(40);
        }
    }

    @Test
    void aPngKeepsEveryPixelAsItIs() throws Exception {
        BufferedImage printed = printed(encoded(40, 20, "png"));
        assertThat(printed.getRGB(19, 5)).isEqualTo(0xFFFF0000);
        assertThat(printed.getRGB(20, 5)).isEqualTo(0xFF0000FF);
    }

    /** The platform takes the greys of a file for linear light, and would print 100 as 168. */
    @Test
    void greysAreNeitherLighterNorDarkerInPrint() throws Exception {
        BufferedImage grey = new BufferedImage(3200, 20, BufferedImage.TYPE_BYTE_GRAY);
        for (int x = 0; x < 3200; x++) {
            for (int y = 0; y < 20; y++) {
                grey.getRaster().setSample(x, y, 0, 100);
            }
        }
        for (String format : new String[] {"png", "jpeg"}) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            ImageIO.write(grey, format, bytes);
            assertThat(printed(bytes.toByteArray()).getRGB(800, 5) & 0xFF)
                    .as(format)
                    .isBetween(99, 101);
        }
    }

    /** A PNG whose header promises 60,000 by 60,000 pixels (ISO/IEC 15948, 11.2.2): 14.4 GB where a pixel takes four bytes. */
    @Test
    void aPictureThatDoesNotFitTheMemorySaysItsPixelsAndTheMemory() {
        byte[] header = "\u0089PNG\r\n\u001A\n\0\0\0\rIHDR\0\0\u00EA`\0\0\u00EA`\u0008\u0002\0\0\0"
                .getBytes(StandardCharsets.ISO_8859_1);
        assertThatThrownBy(() -> Pictures.forPrint(inserted(header, header.length, new byte[64]), 400_000_000))
                .isInstanceOf(UnreadablePictureException.class)
                .hasMessage("has 60000 × 60000 pixels, which take 14400 MB of memory, too much for the 400 MB that the"
                        + " program has");
    }

    /** A colour profile of a megabyte of zeros in a kilobyte: it is never unpacked, so its size does not matter. */
    @Test
    void aPackedColourProfileIsNotUnpacked() throws Exception {
        byte[] png = encoded(40, 20, "png");
        Deflater deflater = new Deflater();
        deflater.setInput(new byte[1 << 20]);
        deflater.finish();
        byte[] packed = new byte[1 << 16];
        int length = deflater.deflate(packed);
        byte[] chunk = new byte[3 + length];
        chunk[0] = 'p';
        System.arraycopy(packed, 0, chunk, 3, length);
        byte[] printed = Pictures.forPrint(inserted(png, 33, chunk("iCCP", chunk)));
        assertThat(printed).hasSizeLessThan(1000);
        assertThat(new String(printed, StandardCharsets.ISO_8859_1)).doesNotContain("iCCP");
    }

    /** A chunk of a PNG (ISO/IEC 15948, 5.3): length, type, data, check sum over type and data. */
    private static byte[] chunk(String type, byte[] data) {
        ByteBuffer chunk = ByteBuffer.allocate(data.length + 12);
        chunk.putInt(data.length).put(type.getBytes(StandardCharsets.US_ASCII)).put(data);
        CRC32 sum = new CRC32();
        sum.update(chunk.array(), 4, data.length + 4);
        return chunk.putInt((int) sum.getValue()).array();
    }

    /** ITU-T T.81, B.2.2: the eighth byte of a frame's segment is its number of components. */
    @Test
    void thePrintingPresssFourColoursAreNamed() {
        byte[] jpeg =
                ("\u00FF\u00D8\u00FF\u00C0\0\u0014\u0008\0\u0001\0\u0001\u0004\u0001\u0011\0\u0002\u0011\0\u0003\u0011\0\u0004\u0011\0"
                                + "\u00FF\u00D9")
                        .getBytes(StandardCharsets.ISO_8859_1);
        assertThatThrownBy(() -> Pictures.forPrint(jpeg))
                .isInstanceOf(UnreadablePictureException.class)
                .hasMessage("has the four colours of a printing press (CMYK), not those of a screen");
    }

    @Test
    void aPictureTakenOnItsSideIsSetUpright() throws Exception {
        BufferedImage upright = printed(withExif(encoded(40, 20, "jpeg"), 6));
        assertThat(upright.getWidth()).isEqualTo(20);
        assertThat(upright.getHeight()).isEqualTo(40);
        assertThat(upright.getRGB(10, 5) & 0xFF0000).isGreaterThan(0xC00000); // the red left half is now the top
        assertThat(upright.getRGB(10, 35) & 0xFF).isGreaterThan(0xC0);
    }

    @Test
    void aLargePictureIsScaledToPrintResolution() throws Exception {
        BufferedImage small = printed(encoded(3200, 1000, "jpeg"));
        assertThat(small.getWidth()).isEqualTo(1600);
        assertThat(small.getHeight()).isEqualTo(500);
    }

    @Test
    void aLargePngStaysAPng() throws Exception {
        byte[] small = Pictures.forPrint(encoded(1000, 3200, "png"));
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
        for (byte[] file : new byte[][] {{1, 2, 3}, "%PDF-1.7".getBytes(StandardCharsets.US_ASCII), {}}) {
            assertThatThrownBy(() -> Pictures.forPrint(file))
                    .isInstanceOf(UnreadablePictureException.class)
                    .hasMessage("is neither JPEG nor PNG");
        }
    }

    @Test
    void halfAPictureCannotBePrinted() throws Exception {
        for (String format : new String[] {"png", "jpeg"}) {
            byte[] whole = encoded(400, 200, format);
            assertThat(Pictures.forPrint(whole)).isNotEmpty();
            assertThatThrownBy(() -> Pictures.forPrint(Arrays.copyOf(whole, whole.length / 2)))
                    .isInstanceOf(UnreadablePictureException.class);
        }
    }

    @Test
    void aDamagedJpegCannotBePrinted() {
        assertThatThrownBy(() ->
                        Pictures.forPrint(new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE1, 0, 1, 0}))
                .isInstanceOf(UnreadablePictureException.class)
                .hasMessage("breaks off: the end of the file is missing");
    }
}
