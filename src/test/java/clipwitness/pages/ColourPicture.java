package clipwitness.pages;

import java.awt.image.BufferedImage;
import java.util.stream.IntStream;

/** A page as a picture in colour, sixteen levels of each: that keeps the file small and is not seen. */
final class ColourPicture {
    private static final int STEP = 255 / 15;
    private static final int[] CHANNELS = {16, 8, 0};

    private ColourPicture() {}

    /** A picture with sixteen levels of red, green and blue. */
    static BufferedImage of(BufferedImage image) {
        BufferedImage coarse = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                coarse.setRGB(x, y, coarse(image.getRGB(x, y)));
            }
        }
        return coarse;
    }

    private static int coarse(int colour) {
        int coarse = 0;
        for (int shift : CHANNELS) {
            coarse |= (Math.round((float) channel(colour, shift) / STEP) * STEP) << shift;
        }
        return coarse;
    }

    /** Number of pixels of which a colour differs by more than so many of 255 levels; all, where the sizes differ. */
    static long differing(BufferedImage expected, BufferedImage actual, int tolerance) {
        int width = actual.getWidth();
        int pixels = width * actual.getHeight();
        if (expected.getWidth() != width || expected.getHeight() != actual.getHeight()) {
            return pixels;
        }
        return IntStream.range(0, pixels)
                .filter(i ->
                        differs(expected.getRGB(i % width, i / width), actual.getRGB(i % width, i / width), tolerance))
                .count();
    }

    private static boolean differs(int one, int other, int tolerance) {
        return IntStream.of(CHANNELS).anyMatch(s -> Math.abs(channel(one, s) - channel(other, s)) > tolerance);
    }

    private static int channel(int colour, int shift) {
        return (colour >> shift) & 0xFF;
    }
}
