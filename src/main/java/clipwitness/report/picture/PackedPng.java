package clipwitness.report.picture;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Writes pixels as PNG. A palette is written as one even where its colours are greys in even steps, which the platform writes as greys: a document takes the
 * packed pixels of a palette as they are, those of greys it unpacks and packs again, pixel by pixel.
 */
final class PackedPng {
    private static final String FORMAT = "javax_imageio_png_1.0";

    private PackedPng() {}

    static byte[] of(BufferedImage image) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        IIOMetadata header = writer.getDefaultImageMetadata(new ImageTypeSpecifier(image), null);
        if (image.getColorModel() instanceof IndexColorModel palette && !palette.hasAlpha()) {
            header.setFromTree(FORMAT, header(image, palette));
        }
        try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(stream);
            writer.write(null, new IIOImage(image, null, header), null);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    private static IIOMetadataNode header(BufferedImage image, IndexColorModel palette) {
        IIOMetadataNode header = new IIOMetadataNode("IHDR");
        header.setAttribute("width", Integer.toString(image.getWidth()));
        header.setAttribute("height", Integer.toString(image.getHeight()));
        header.setAttribute("bitDepth", Integer.toString(image.getSampleModel().getSampleSize(0)));
        header.setAttribute("colorType", "Palette");
        header.setAttribute("compressionMethod", "deflate");
        header.setAttribute("filterMethod", "adaptive");
        header.setAttribute("interlaceMethod", "none");
        IIOMetadataNode root = new IIOMetadataNode(FORMAT);
        root.appendChild(header);
        root.appendChild(colours(palette));
        return root;
    }

    private static IIOMetadataNode colours(IndexColorModel palette) {
        IIOMetadataNode colours = new IIOMetadataNode("PLTE");
        for (int i = 0; i < palette.getMapSize(); i++) {
            IIOMetadataNode colour = new IIOMetadataNode("PLTEEntry");
            colour.setAttribute("index", Integer.toString(i));
            colour.setAttribute("red", Integer.toString(palette.getRed(i)));
            colour.setAttribute("green", Integer.toString(palette.getGreen(i)));
            colour.setAttribute("blue", Integer.toString(palette.getBlue(i)));
            colours.appendChild(colour);
        }
        return colours;
    }
}
