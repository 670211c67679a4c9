package clipwitness.pages;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.stream.IntStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** A page as a small picture of sixteen greys. */
final class GreyPicture {
    private static final int GREYS = 16;
    private static final int STEP = 255 / (GREYS - 1);

    private GreyPicture() {}

    /** A picture in sixteen greys, four bits each. */
    static BufferedImage of(BufferedImage image) {
        byte[] levels = new byte[GREYS];
        IntStream.range(0, GREYS).forEach(i -> levels[i] = (byte) (i * STEP));
        BufferedImage grey = new BufferedImage(
                image.getWidth(),
                image.getHeight(),
                BufferedImage.TYPE_BYTE_BINARY,
                new IndexColorModel(4, GREYS, levels, levels, levels));
        WritableRaster raster = grey.getRaster();
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                raster.setSample(x, y, 0, Math.round((float) (image.getRGB(x, y) & 0xFF) / STEP));
            }
        }
        return grey;
    }

    /** A PNG file, as small as the platform makes it. */
    static byte[] packed(BufferedImage grey) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ImageWriteParam smallest = writer.getDefaultWriteParam();
        smallest.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        smallest.setCompressionQuality(0);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream stream = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(stream);
            writer.write(null, new IIOImage(grey, null, null), smallest);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    /** What differs: red where two pictures differ by more than so much, pale where they agree on ink; a missing picture is white. */
    static BufferedImage difference(BufferedImage expected, BufferedImage actual, int tolerance) {
        int width = Math.max(expected.getWidth(), actual.getWidth());
        int height = Math.max(expected.getHeight(), actual.getHeight());
        BufferedImage shown = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int before = level(expected, x, y);
                int now = level(actual, x, y);
                int pale = 255 - (255 - Math.max(before, now)) / 3;
                shown.setRGB(x, y, Math.abs(before - now) > tolerance ? 0xB02A20 : pale * 0x010101);
            }
        }
        return shown;
    }

    /** Number of pixels that differ by more than so many of 255 levels. */
    static long differing(BufferedImage expected, BufferedImage actual, int tolerance) {
        int width = Math.max(expected.getWidth(), actual.getWidth());
        int height = Math.max(expected.getHeight(), actual.getHeight());
        return IntStream.range(0, width * height)
                .filter(i -> Math.abs(level(expected, i % width, i / width) - level(actual, i % width, i / width))
                        > tolerance)
                .count();
    }

    private static int level(BufferedImage image, int x, int y) {
        return x < image.getWidth() && y < image.getHeight() ? image.getRGB(x, y) & 0xFF : 255;
    }
}
