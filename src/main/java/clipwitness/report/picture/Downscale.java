package clipwitness.report.picture;

import java.awt.image.BufferedImage;

/** Makes a picture smaller: each new pixel is the mean of those that it takes the place of. */
final class Downscale {
    private static final int[] SHIFTS = {24, 16, 8, 0};

    private Downscale() {}

    /** The picture with its longer side so many pixels long; a smaller one as it is. */
    static BufferedImage to(int longest, BufferedImage image) {
        int side = Math.max(image.getWidth(), image.getHeight());
        if (side <= longest) {
            return image;
        }
        int width = Math.max(1, Math.round((float) image.getWidth() * longest / side));
        int height = Math.max(1, Math.round((float) image.getHeight() * longest / side));
        boolean alpha = image.getColorModel().hasAlpha();
        BufferedImage small =
                new BufferedImage(width, height, alpha ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            int top = y * image.getHeight() / height;
            int rows = (y + 1) * image.getHeight() / height - top;
            int[] pixels = image.getRGB(0, top, image.getWidth(), rows, null, 0, image.getWidth());
            for (int x = 0; x < width; x++) {
                int left = x * image.getWidth() / width;
                int right = (x + 1) * image.getWidth() / width;
                small.setRGB(x, y, mean(pixels, image.getWidth(), rows, left, right));
            }
        }
        return small;
    }

    private static int mean(int[] pixels, int width, int rows, int left, int right) {
        long[] sums = new long[SHIFTS.length];
        for (int row = 0; row < rows; row++) {
            for (int x = left; x < right; x++) {
                for (int i = 0; i < SHIFTS.length; i++) {
                    sums[i] += pixels[row * width + x] >>> SHIFTS[i] & 0xFF;
                }
            }
        }
        int count = rows * (right - left);
        int mean = 0;
        for (int i = 0; i < SHIFTS.length; i++) {
            mean |= (int) ((sums[i] + count / 2) / count) << SHIFTS[i];
        }
        return mean;
    }
}
