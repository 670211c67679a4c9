package clipwitness.figure.chart;

import static org.assertj.core.api.Assertions.assertThat;

import clipwitness.figure.RecordingCanvas;
import clipwitness.figure.canvas.Box;
import clipwitness.figure.canvas.Ink;
import clipwitness.figure.canvas.MarkerShape;
import clipwitness.figure.canvas.StateStyle;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The chart library's points must lie where the plot's numbers say. */
class PointLayerTest {
    private static final Axes AXES = new Axes(NumberText.in("en"));
    private static final Box AREA = new Box(20.5, 10.25, 150.4, 80.7);
    private static final StateStyle STYLE = new StateStyle("state", Color.RED, Ink.stroke(1), MarkerShape.SQUARE);

    @Test
    void aPointLiesWhereALinearAxisPutsIt() {
        Axis y = AXES.exact("y", Unit.ONE, new Extent(0, 4), 4);
        // one quarter up a height of 80.7 from 90.95, one half along a width of 150.4 from 20.5
        assertThat(paint(y, new PointSeries.Point(0.5, 1, 0, false)).getRGB(96, 71))
                .isEqualTo(Color.RED.getRGB());
    }

    @Test
    void aPointLiesWhereALogarithmicAxisPutsIt() {
        Axis y = new Axis("y", new Scale.Logarithmic(1, 100), List.of());
        // 10 lies halfway between 1 and 100
        assertThat(paint(y, new PointSeries.Point(0.5, 10, 0, false)).getRGB(96, 51))
                .isEqualTo(Color.RED.getRGB());
    }

    @Test
    void theUncertaintyBarReachesFromValueLessUToValuePlusU() {
        Axis y = AXES.exact("y", Unit.ONE, new Extent(0, 4), 4);
        BufferedImage image = paint(y, new PointSeries.Point(0.5, 2, 1, false));
        // 3 lies at row 30.4, 1 at row 70.8
        assertThat(inkedRows(image).low()).isBetween(29.0, 31.0);
        assertThat(inkedRows(image).high()).isBetween(70.0, 72.0);
    }

    @Test
    void aBoundHasAnArrowDownwardFromTheBoundAndNoPoint() {
        Axis y = AXES.exact("y", Unit.ONE, new Extent(0, 4), 4);
        Extent rows = inkedRows(paint(y, new PointSeries.Point(0.5, 1, 1, true)));
        assertThat(rows.low()).isBetween(49.0, 51.0);
        assertThat(rows.high()).isBetween(58.0, 61.0);
    }

    private static BufferedImage paint(Axis y, PointSeries.Point point) {
        BufferedImage image = new BufferedImage(200, 110, BufferedImage.TYPE_INT_ARGB);
        Axis x = AXES.exact("x", Unit.ONE, new Extent(0, 1), 4);
        PointSeries series = new PointSeries(STYLE, false, true, List.of(point));
        new PointLayer(List.of(series)).paint(new Plot(new RecordingCanvas(image.createGraphics()), AREA, x, y));
        return image;
    }

    private static Extent inkedRows(BufferedImage image) {
        int first = Integer.MAX_VALUE;
        int last = -1;
        for (int row = 0; row < image.getHeight(); row++) {
            for (int column = 0; column < image.getWidth(); column++) {
                if (image.getRGB(column, row) >>> 24 > 127) {
                    first = Math.min(first, row);
                    last = row;
                }
            }
        }
        return new Extent(first, last);
    }
}
