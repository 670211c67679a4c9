package clipwitness.report.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PackedPixelsTest {
    private static final int WIDTH = 45; // no whole number of bytes
    private static final int HEIGHT = 11;

    private static BufferedImage drawing(int bits, boolean colours) {
        int count = 1 << bits;
        byte[] red = new byte[count];
        byte[] green = new byte[count];
        for (int i = 0; i < count; i++) {
            red[i] = (byte) (255 * i / (count - 1));
            green[i] = (byte) (colours ? 255 - 7 * i : red[i]);
        }
        BufferedImage image = new BufferedImage(
                WIDTH,
                HEIGHT,
                BufferedImage.TYPE_BYTE_BINARY,
                new IndexColorModel(bits, count, red, green, colours ? green : red));
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                image.getRaster().setSample(x, y, 0, (x * x + 3 * y) % count);
            }
        }
        return image;
    }

    private static byte[] written(BufferedImage image, boolean interlaced) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ImageWriteParam how = writer.getDefaultWriteParam();
        how.setProgressiveMode(interlaced ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
        try (ImageOutputStream stream = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(stream);
            writer.write(null, new IIOImage(image, null, null), how);
        }
        return bytes.toByteArray();
    }

    /** The platform's own reader, which unpacks pixel by pixel, is the measure. */
    @ParameterizedTest
    @CsvSource({
        "1, false, false",
        "1, true, false",
        "2, false, false",
        "2, true, false",
        "4, false, false",
        "4, true, false",
        "1, false, true",
        "4, true, true"
    })
    void pixelsThatShareAByteArePrintedAsTheyAre(int bits, boolean colours, boolean interlaced) throws Exception {
        byte[] file = written(drawing(bits, colours), interlaced);
        BufferedImage expected = ImageIO.read(new ByteArrayInputStream(file));
        BufferedImage printed = ImageIO.read(new ByteArrayInputStream(Pictures.forPrint(file)));
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                assertThat(printed.getRGB(x, y)).as("%d %d", x, y).isEqualTo(expected.getRGB(x, y));
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"1", "4"})
    void halfADrawingCannotBePrinted(int bits) throws Exception {
        byte[] whole = written(drawing(bits, false), false);
        assertThatThrownBy(() -> Pictures.forPrint(Arrays.copyOf(whole, whole.length - 30)))
                .isInstanceOf(UnreadablePictureException.class);
    }
}
