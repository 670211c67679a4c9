package clipwitness.report.paper;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Makes pictures fit for print: upright, no larger than print can show, and without what a camera writes beside the picture (place,
 * owner, time). A picture that is upright and small enough keeps its pixels as they are.
 */
public final class Pictures {
    /** Pixels of the longer side: 170 mm at 240 dots an inch. */
    static final int LONGEST = 1600;

    private static final float JPEG_QUALITY = 0.87f;

    private Pictures() {}

    /** The picture, JPEG or PNG; empty where it is neither, or damaged. */
    public static Optional<byte[]> forPrint(byte[] picture) {
        try {
            Optional<JpegFile> jpeg = JpegFile.of(picture);
            if (jpeg.isPresent() && !jpeg.get().isWhole()) {
                return Optional.empty();
            }
            if (jpeg.isPresent() && jpeg.get().orientation() == Orientation.UPRIGHT && fits(picture)) {
                return Optional.of(jpeg.get().withoutNotes());
            }
            BufferedImage image = decoded(picture);
            if (jpeg.isEmpty() && fits(picture)) {
                return Optional.of(picture);
            }
            Orientation orientation = jpeg.map(JpegFile::orientation).orElse(Orientation.UPRIGHT);
            BufferedImage upright = orientation.upright(Downscale.to(LONGEST, image));
            return Optional.of(jpeg.isPresent() ? jpeg(upright) : png(upright));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The pixels; a picture that breaks off is a fault. */
    private static BufferedImage decoded(byte[] picture) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture));
        if (image == null) {
            throw new IOException("no picture");
        }
        return image;
    }

    private static boolean fits(byte[] picture) throws IOException {
        try (var stream = ImageIO.createImageInputStream(new ByteArrayInputStream(picture))) {
            var readers = ImageIO.getImageReaders(stream);
            if (!readers.hasNext()) {
                throw new IOException("no picture");
            }
            var reader = readers.next();
            try {
                reader.setInput(stream);
                return Math.max(reader.getWidth(0), reader.getHeight(0)) <= LONGEST;
            } finally {
                reader.dispose();
            }
        }
    }

    private static byte[] png(BufferedImage image) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }

    private static byte[] jpeg(BufferedImage image) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam quality = writer.getDefaultWriteParam();
        quality.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        quality.setCompressionQuality(JPEG_QUALITY);
        try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(stream);
            writer.write(null, new IIOImage(image, null, null), quality);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
