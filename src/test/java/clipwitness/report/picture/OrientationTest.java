package clipwitness.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Exif 2.32, 4.6.4 A, Orientation: where the 0th row and the 0th column of the file are seen. The picture of the test reads
 * {@code ab/cd/ef} row by row as it is stored; the text says what must be seen.
 */
class OrientationTest {
    @ParameterizedTest
    @CsvSource({
        "1, ab/cd/ef", // row 0 at the top, column 0 on the left
        "2, ba/dc/fe", // top, right
        "3, fe/dc/ba", // bottom, right
        "4, ef/cd/ab", // bottom, left
        "5, ace/bdf", // left, top
        "6, eca/fdb", // right, top
        "7, fdb/eca", // right, bottom
        "8, bdf/ace", // left, bottom
        "0, ab/cd/ef",
        "9, ab/cd/ef",
    })
    void aPictureIsSetUpright(int tag, String seen) {
        BufferedImage stored = new BufferedImage(2, 3, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 6; i++) {
            stored.setRGB(i % 2, i / 2, 'a' + i);
        }
        assertThat(read(Orientation.of(tag).upright(stored))).isEqualTo(seen);
    }

    private static String read(BufferedImage image) {
        StringBuilder text = new StringBuilder();
        for (int y = 0; y < image.getHeight(); y++) {
            text.append(y > 0 ? "/" : "");
            for (int x = 0; x < image.getWidth(); x++) {
                text.append((char) (image.getRGB(x, y) & 0xFF));
            }
        }
        return text.toString();
    }
}
