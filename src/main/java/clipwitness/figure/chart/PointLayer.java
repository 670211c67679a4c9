package clipwitness.figure.chart;

import clipwitness.figure.canvas.Box;
import clipwitness.figure.chart.PointSeries.Point;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * Points with uncertainty bars and the lines that join them, drawn by the chart library over the plot's area. Its chart has no
 * margins, so that its coordinates are the plot's; grid, numbers and labels are the plot's too. Where a value does not exceed
 * its uncertainty, a bar at value + U with an arrow below it takes the place of the point.
 *
 * @param series the states' points
 */
public record PointLayer(List<PointSeries> series) implements Layer {
    private static final Color CLEAR = new Color(0xFF, 0xFF, 0xFF, 0);
    private static final int MARKER_SIZE = 5;

    /** Copies what it is given. */
    public PointLayer {
        series = List.copyOf(series);
    }

    @Override
    public void paint(Plot plot) {
        Box area = plot.area();
        int width = (int) Math.ceil(area.width());
        int height = (int) Math.ceil(area.height());
        XYChart chart = new XYChart(width, height);
        style(chart.getStyler(), plot);
        withoutMarks(chart.getStyler(), Math.max(width, height));
        series.forEach(s -> addBars(chart, s));
        series.forEach(s -> addPoints(chart, s));
        Graphics2D g = (Graphics2D) plot.canvas().graphics().create();
        g.translate(area.x(), area.y());
        g.scale(area.width() / width, area.height() / height);
        chart.paint(g, width, height);
        g.dispose();
        plot.clipped(() -> series.forEach(s -> paintBounds(plot, s)));
    }

    private static void style(XYStyler styler, Plot plot) {
        styler.setChartTitleVisible(false);
        styler.setLegendVisible(false);
        styler.setChartPadding(0);
        styler.setPlotMargin(0);
        styler.setPlotContentSize(1);
        styler.setPlotBorderVisible(false);
        styler.setPlotGridLinesVisible(false);
        styler.setChartBackgroundColor(CLEAR);
        styler.setPlotBackgroundColor(CLEAR);
        styler.setAxisTitlesVisible(false);
        styler.setAxisTicksVisible(false);
        styler.setErrorBarsColorSeriesColor(true);
        styler.setMarkerSize(MARKER_SIZE);
        styler.setXAxisMin(plot.x().scale().low());
        styler.setXAxisMax(plot.x().scale().high());
        styler.setYAxisMin(plot.y().scale().low());
        styler.setYAxisMax(plot.y().scale().high());
        styler.setXAxisLogarithmic(plot.x().scale() instanceof Scale.Logarithmic);
        styler.setYAxisLogarithmic(plot.y().scale() instanceof Scale.Logarithmic);
    }

    /**
     * The chart places marks and measures their numbers even where its axes are hidden, which starts Java's font manager, and that fails on
     * a machine without installed fonts. A least distance of marks that exceeds the axis leaves nothing to place or to measure.
     */
    private static void withoutMarks(XYStyler styler, int longestAxis) {
        styler.setXAxisTickMarkSpacingHint(longestAxis + 1);
        styler.setYAxisTickMarkSpacingHint(longestAxis + 1);
    }

    private static void addBars(XYChart chart, PointSeries of) {
        if (!of.measured().isEmpty()) {
            XYSeries bars = added(chart, of.measured(), Point::uncertainty);
            bars.setLineColor(of.style().color());
            bars.setMarkerColor(of.style().color());
            bars.setLineStyle(SeriesLines.NONE);
            bars.setMarker(SeriesMarkers.NONE);
        }
    }

    private static void addPoints(XYChart chart, PointSeries of) {
        if (!of.measured().isEmpty()) {
            XYSeries points = added(chart, of.measured(), p -> Double.NaN);
            points.setLineColor(of.style().color());
            points.setMarkerColor(of.style().color());
            points.setLineStyle(of.joined() ? of.style().line() : SeriesLines.NONE);
            points.setMarker(new StateMarker(of));
        }
    }

    private static XYSeries added(XYChart chart, List<Point> points, ToDoubleFunction<Point> bar) {
        return chart.addSeries(
                Integer.toString(chart.getSeriesCollection().size()),
                points.stream().mapToDouble(Point::x).toArray(),
                points.stream().mapToDouble(Point::y).toArray(),
                points.stream().mapToDouble(bar).toArray());
    }

    private static void paintBounds(Plot plot, PointSeries of) {
        of.points().stream()
                .filter(Point::upperBound)
                .forEach(p -> BoundMark.paint(
                        plot.canvas().graphics(),
                        plot.px(p.x()),
                        plot.py(p.y() + p.uncertainty()),
                        plot.area().bottom(),
                        of.style().color()));
    }

    @Override
    public List<Trace> traces(Plot plot) {
        return series.stream()
                .filter(s -> s.joined() && !s.measured().isEmpty())
                .map(s -> trace(plot, s))
                .toList();
    }

    private static Trace trace(Plot plot, PointSeries series) {
        List<Point2D> corners = new ArrayList<>();
        for (Point p : series.measured()) {
            Extent bar = p.covered();
            for (double y : new double[] {p.y(), bar.high(), bar.low(), p.y()}) {
                corners.add(new Point2D.Double(plot.px(p.x()), plot.py(y)));
            }
        }
        return new Trace(series.style().label(), series.style().color(), corners);
    }

    private static final class StateMarker extends Marker {
        private final PointSeries series;

        StateMarker(PointSeries series) {
            this.series = series;
        }

        @Override
        public void paint(Graphics2D g, double x, double y, int size) {
            series.style().marker().paint(g, x, y, size, series.style().color(), series.hollow());
        }
    }
}
