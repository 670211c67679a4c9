package clipwitness.report.picture;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.MultiPixelPackedSampleModel;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Optional;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Reads a PNG that packs several pixels into a byte, as drawings in few colours do. The platform unpacks and packs these one by one; here it reads the
 * bytes of a row as if each were a pixel. A PNG filters and compresses bytes, whatever they hold (ISO/IEC 15948, 9.2), so they are the same.
 */
final class PackedPixels {
    /** Places in the header, which is the first chunk (ISO/IEC 15948, 11.2.2). */
    private static final int TYPE = 12;

    private static final int WIDTH = 16;
    private static final int BIT_DEPTH = 24;
    private static final int COLOUR_TYPE = 25;
    private static final int INTERLACE = 28;
    private static final int CHECK = 29;
    private static final int END = 33;

    private static final int HEADER = 'I' << 24 | 'H' << 16 | 'D' << 8 | 'R';
    private static final byte GREY = 0;

    private PackedPixels() {}

    /**
     * The pixels; empty where the file packs none, or has them interlaced.
     *
     * @param file   a picture file
     * @param reader has the file as its input
     */
    static Optional<BufferedImage> of(byte[] file, ImageReader reader) throws IOException {
        ImageTypeSpecifier type = reader.getImageTypes(0).next();
        boolean packed = type.getSampleModel() instanceof MultiPixelPackedSampleModel;
        if (!packed || !PngFile.is(file) || !isPlain(ByteBuffer.wrap(file))) {
            return Optional.empty();
        }
        BufferedImage image = type.createBufferedImage(reader.getWidth(0), reader.getHeight(0));
        byte[] pixels = bytes(image);
        byte[] read = bytes(ofBytes(file, pixels.length / image.getHeight()));
        System.arraycopy(read, 0, pixels, 0, pixels.length);
        return Optional.of(image);
    }

    private static boolean isPlain(ByteBuffer file) {
        return file.capacity() > END && file.getInt(TYPE) == HEADER && file.get(INTERLACE) == 0;
    }

    private static byte[] bytes(BufferedImage image) {
        return ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    }

    /** The same file with a header that calls each byte a grey pixel. */
    private static BufferedImage ofBytes(byte[] file, int bytesPerRow) throws IOException {
        ByteBuffer greys = ByteBuffer.wrap(file.clone());
        greys.putInt(WIDTH, bytesPerRow);
        greys.put(BIT_DEPTH, (byte) Byte.SIZE);
        greys.put(COLOUR_TYPE, GREY);
        CRC32 check = new CRC32();
        check.update(greys.array(), TYPE, CHECK - TYPE);
        greys.putInt(CHECK, (int) check.getValue());
        return read(greys.array());
    }

    private static BufferedImage read(byte[] file) throws IOException {
        ImageReader reader = ImageIO.getImageReadersByFormatName("png").next();
        try (ImageInputStream stream = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            reader.setInput(stream, true, true);
            return reader.read(0);
        } finally {
            reader.dispose();
        }
    }
}
