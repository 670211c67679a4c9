package clipwitness.report.picture;

import java.awt.image.BufferedImage;

/** How a camera was held: the values of the Exif tag Orientation (Exif 2.32, 4.6.4 A), in their order. */
enum Orientation {
    /** 1: as it is. */
    UPRIGHT(false, false, false),
    /** 2: left and right changed over. */
    MIRRORED(false, true, false),
    /** 3: upside down. */
    HALF_TURN(false, true, true),
    /** 4: top and bottom changed over. */
    FLIPPED(false, false, true),
    /** 5: rows are columns. */
    TRANSPOSED(true, false, false),
    /** 6: to be turned a quarter clockwise. */
    QUARTER_TURN(true, false, true),
    /** 7: rows are columns, both changed over. */
    TRANSVERSED(true, true, true),
    /** 8: to be turned a quarter counter-clockwise. */
    QUARTER_BACK(true, true, false);

    private final boolean swaps;
    private final boolean fromRight;
    private final boolean fromBottom;

    Orientation(boolean swaps, boolean fromRight, boolean fromBottom) {
        this.swaps = swaps;
        this.fromRight = fromRight;
        this.fromBottom = fromBottom;
    }

    /** The orientation of a tag's value; upright where the value means nothing. */
    static Orientation of(int tag) {
        return tag >= 1 && tag <= values().length ? values()[tag - 1] : UPRIGHT;
    }

    /** A picture taken so, set upright. */
    BufferedImage upright(BufferedImage taken) {
        if (this == UPRIGHT) {
            return taken;
        }
        int width = taken.getWidth();
        int height = taken.getHeight();
        int type = taken.getColorModel().hasAlpha() ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB;
        BufferedImage upright = new BufferedImage(swaps ? height : width, swaps ? width : height, type);
        for (int y = 0; y < upright.getHeight(); y++) {
            for (int x = 0; x < upright.getWidth(); x++) {
                int column = swaps ? y : x;
                int row = swaps ? x : y;
                upright.setRGB(
                        x,
                        y,
                        taken.getRGB(fromRight ? width - 1 - column : column, fromBottom ? height - 1 - row : row));
            }
        }
        return upright;
    }
}
