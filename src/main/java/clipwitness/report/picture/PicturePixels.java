package clipwitness.report.picture;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** Reads the pixels of a picture, in the colours of a screen (sRGB), and nothing else that the file holds. */
final class PicturePixels {
    private static final double BYTES_PER_PIXEL = 4;
    private static final double MEGA = 1e6;

    /** What is left holds the file, the report and the picture as it is printed. */
    private static final double PART_OF_MEMORY = 0.5;

    private PicturePixels() {}

    /**
     * The pixels.
     *
     * @param file   the file
     * @param format its format, as the platform names it
     * @param memory bytes that the program has
     * @throws IOException where the file is damaged
     */
    static BufferedImage of(byte[] file, String format, long memory) throws IOException, UnreadablePictureException {
        ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
        try (ImageInputStream stream = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            reader.setInput(stream, true, true); // neither comments nor packed profiles are looked at
            requireRoom(reader.getWidth(0), reader.getHeight(0), memory);
            Optional<BufferedImage> packed = PackedPixels.of(file, reader);
            return inScreenColours(packed.isPresent() ? packed.get() : reader.read(0));
        } catch (RuntimeException e) { // the platform's readers throw many kinds over damaged files
            throw new IOException(e);
        } finally {
            reader.dispose();
        }
    }

    private static void requireRoom(int width, int height, long memory) throws UnreadablePictureException {
        double needed = BYTES_PER_PIXEL * width * height;
        if (needed > PART_OF_MEMORY * memory) {
            throw new UnreadablePictureException(String.format(
                    Locale.ROOT,
                    "has %d × %d pixels, which take %.0f MB of memory, too much for the %.0f MB that the program has",
                    width,
                    height,
                    needed / MEGA,
                    memory / MEGA));
        }
    }

    private static BufferedImage inScreenColours(BufferedImage image) {
        ColorSpace colours = image.getColorModel().getColorSpace();
        if (colours.getType() == ColorSpace.TYPE_GRAY) {
            return ofGreys(image);
        }
        if (colours.isCS_sRGB()) {
            return image;
        }
        BufferedImage converted = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        return new ColorConvertOp(null).filter(image, converted);
    }

    /** Greys as they are written in the file: the platform takes them for linear, and would print them too light. */
    private static BufferedImage ofGreys(BufferedImage image) {
        Raster raster = image.getRaster();
        boolean alpha = raster.getNumBands() > 1;
        int most = (1 << raster.getSampleModel().getSampleSize(0)) - 1;
        BufferedImage grey = new BufferedImage(
                image.getWidth(), image.getHeight(), alpha ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int value = raster.getSample(x, y, 0) * 255 / most;
                int opacity = alpha ? raster.getSample(x, y, 1) * 255 / most : 255;
                grey.setRGB(x, y, opacity << 24 | value << 16 | value << 8 | value);
            }
        }
        return grey;
    }
}
