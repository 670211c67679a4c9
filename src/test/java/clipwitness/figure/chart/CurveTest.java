package clipwitness.figure.chart;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.capture.Samples;
import clipwitness.figure.RecordingCanvas;
import clipwitness.figure.canvas.Box;
import clipwitness.figure.canvas.Ink;
import clipwitness.figure.canvas.MarkerShape;
import clipwitness.figure.canvas.StateStyle;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.Color;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** What a curve becomes in a PDF: its operators, as ISO 32000-2, table 58 names them (m moves, l draws a line, c a curve). */
class CurveTest {
    private static final Axes AXES = new Axes(NumberText.in("en"));
    private static final StateStyle STYLE = new StateStyle("state", Color.BLACK, Ink.stroke(1), MarkerShape.CIRCLE);

    @Test
    void aMillionPointsAreOnePathOfAtMostTwoThousand() throws IOException {
        double[] x = new double[1_000_000];
        Arrays.setAll(x, i -> i * 1e-6);
        double[] y = Arrays.stream(x).map(t -> Math.sin(500 * t)).toArray();
        List<String> operators = drawn(new Curve(STYLE, Samples.of(x), Samples.of(y)));
        assertThat(operators.stream().filter("m"::equals)).hasSize(1);
        assertThat(operators.stream().filter("l"::equals)).hasSizeBetween(1000, 1999);
        assertThat(operators.stream().filter("S"::equals)).hasSize(1);
    }

    @Test
    void cornersAreNeverRounded() throws IOException {
        Curve curve = new Curve(STYLE, Samples.of(0, 0.3, 0.7, 1), Samples.of(0, 0.5, 0.5, 0));
        assertThat(drawn(curve)).contains("m", "l").doesNotContain("c", "v", "y");
    }

    @Test
    void aGapBreaksTheLine() throws IOException {
        Curve curve = new Curve(STYLE, Samples.of(0, 0.2, 0.5, 0.7, 1), Samples.of(0, 1, Double.NaN, 0.4, 0.5));
        assertThat(drawn(curve).stream().filter("m"::equals)).hasSize(2);
    }

    private static List<String> drawn(Curve curve) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, 200, 100);
            Axis x = AXES.exact("x", Unit.ONE, new Extent(0, 1), 5);
            Axis y = AXES.exact("y", Unit.ONE, new Extent(-1, 1), 5);
            curve.paint(new Plot(new RecordingCanvas(graphics), new Box(10, 10, 180, 80), x, y));
            graphics.dispose();
            List<String> operators = new PDFStreamParser(graphics.getXFormObject())
                    .parse().stream()
                            .filter(Operator.class::isInstance)
                            .map(o -> ((Operator) o).getName())
                            .toList();
            return operators.subList(operators.lastIndexOf("W"), operators.size()); // past the clipping rectangle
        }
    }
}
