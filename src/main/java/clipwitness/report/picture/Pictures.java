package clipwitness.report.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Makes pictures fit for print: upright, no larger than print can show. Every picture is written anew from its pixels, so that nothing that
 * a camera or a program wrote beside them (place, owner, time) reaches the document, wherever in the file it stood.
 */
public final class Pictures {
    /** Pixels of the longer side: 170 mm at 240 dots an inch. */
    static final int LONGEST = 1600;

    private static final float JPEG_QUALITY = 0.92f;
    private static final int PRESS_COLOURS = 4;

    private Pictures() {}

    /** Whether a file begins as a JPEG or a PNG. */
    public static boolean isPicture(byte[] file) {
        return JpegFile.is(file) || PngFile.is(file);
    }

    /**
     * The picture as print needs it: JPEG where it was one, else PNG.
     *
     * @param file a picture file
     * @throws UnreadablePictureException if it is neither JPEG nor PNG, damaged, or too large for the memory
     */
    public static byte[] forPrint(byte[] file) throws UnreadablePictureException {
        return forPrint(file, Runtime.getRuntime().maxMemory());
    }

    /** The same with so many bytes of memory. */
    static byte[] forPrint(byte[] file, long memory) throws UnreadablePictureException {
        if (!isPicture(file)) {
            throw new UnreadablePictureException("is neither JPEG nor PNG");
        }
        try {
            return PngFile.is(file)
                    ? PackedPng.of(PngFile.orientation(file)
                            .upright(Downscale.to(LONGEST, PicturePixels.of(file, "png", memory))))
                    : photo(file, JpegFile.of(file), memory);
        } catch (IOException e) {
            throw new UnreadablePictureException("is damaged", e);
        } catch (OutOfMemoryError e) {
            throw new UnreadablePictureException("does not fit the memory beside the rest of the report", e);
        }
    }

    private static byte[] photo(byte[] file, JpegFile jpeg, long memory)
            throws IOException, UnreadablePictureException {
        if (!jpeg.isWhole()) {
            throw new UnreadablePictureException("breaks off: the end of the file is missing");
        }
        if (jpeg.colours() == PRESS_COLOURS) {
            throw new UnreadablePictureException(
                    "has the four colours of a printing press (CMYK), not those of a screen");
        }
        return jpeg(jpeg.orientation().upright(Downscale.to(LONGEST, PicturePixels.of(file, "jpeg", memory))));
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
