package clipwitness.bench;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import javax.imageio.ImageIO;

/**
 * A drawing in place of a photograph: the clipping diodes across the feedback and the switch that shorts the third. Letters are its
 * own, so that it looks the same everywhere.
 */
final class SwitchDrawing {
    private static final int WIDTH = 900;
    private static final int HEIGHT = 520;
    private static final int DOT = 4;

    /** Letters as seven rows of five dots, lowest bit at the right. */
    private static final Map<Character, int[]> LETTERS = Map.ofEntries(
            Map.entry('1', new int[] {4, 12, 4, 4, 4, 4, 14}),
            Map.entry('2', new int[] {14, 17, 1, 2, 4, 8, 31}),
            Map.entry('3', new int[] {14, 17, 1, 6, 1, 17, 14}),
            Map.entry('D', new int[] {30, 17, 17, 17, 17, 17, 30}),
            Map.entry('E', new int[] {31, 16, 16, 30, 16, 16, 31}),
            Map.entry('I', new int[] {14, 4, 4, 4, 4, 4, 14}),
            Map.entry('N', new int[] {17, 25, 21, 19, 17, 17, 17}),
            Map.entry('S', new int[] {15, 16, 16, 14, 1, 1, 30}),
            Map.entry('T', new int[] {31, 4, 4, 4, 4, 4, 4}),
            Map.entry('V', new int[] {17, 17, 17, 17, 17, 10, 4}));

    private final Graphics2D canvas;

    private SwitchDrawing(Graphics2D canvas) {
        this.canvas = canvas;
    }

    /** The drawing as a PNG file. */
    static byte[] png() {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_BYTE_BINARY);
        Graphics2D canvas = image.createGraphics();
        canvas.setColor(Color.WHITE);
        canvas.fillRect(0, 0, WIDTH, HEIGHT);
        canvas.setColor(Color.BLACK);
        canvas.setStroke(new BasicStroke(3));
        new SwitchDrawing(canvas).paint();
        canvas.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private void paint() {
        canvas.drawLine(60, 300, 150, 300);
        canvas.drawLine(150, 160, 150, 300);
        canvas.drawLine(750, 160, 750, 400);
        canvas.drawLine(750, 300, 840, 300);
        diode(150, 750, 160, 1);
        text("D1", 425, 80);
        diode(150, 450, 300, -1);
        text("D2", 275, 220);
        diode(450, 750, 300, -1);
        text("D3", 575, 220);
        toggle();
        text("INVENTED", 40, 460);
    }

    /** A diode in the middle of a line; direction 1 points to the right. */
    private void diode(int from, int to, int y, int direction) {
        int middle = (from + to) / 2;
        int tip = middle + direction * 25;
        int base = middle - direction * 25;
        canvas.drawLine(from, y, to, y);
        canvas.fillPolygon(new int[] {base, base, tip}, new int[] {y - 28, y + 28, y}, 3);
        canvas.drawLine(tip, y - 28, tip, y + 28);
    }

    /** The switch across the third diode, open. */
    private void toggle() {
        canvas.drawLine(450, 300, 450, 400);
        canvas.drawLine(450, 400, 550, 400);
        canvas.drawLine(550, 400, 640, 360);
        canvas.drawLine(650, 400, 750, 400);
        text("S1", 575, 420);
    }

    private void text(String letters, int left, int top) {
        for (int i = 0; i < letters.length(); i++) {
            int[] rows = LETTERS.get(letters.charAt(i));
            for (int row = 0; row < rows.length; row++) {
                for (int column = 0; column < 5; column++) {
                    if ((rows[row] >> (4 - column) & 1) == 1) {
                        canvas.fillRect(left + (6 * i + column) * DOT, top + row * DOT, DOT, DOT);
                    }
                }
            }
        }
    }
}
