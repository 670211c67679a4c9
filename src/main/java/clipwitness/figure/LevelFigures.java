package clipwitness.figure;

import clipwitness.compare.result.LevelSeries;
import clipwitness.compare.result.LevelStep;
import clipwitness.compare.result.Series;
import clipwitness.figure.canvas.Figure;
import clipwitness.figure.chart.Axis;
import clipwitness.figure.chart.Extent;
import clipwitness.figure.chart.LegendEntry;
import clipwitness.figure.chart.Panel;
import clipwitness.figure.chart.PanelFigure;
import clipwitness.figure.chart.PanelGrid;
import clipwitness.figure.chart.PointLayer;
import clipwitness.figure.chart.PointSeries;
import clipwitness.figure.chart.PointSeries.Point;
import clipwitness.measure.Measured;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Output against input over level steps, a panel for each setting of the gain control that has them. */
final class LevelFigures {
    private static final double SINGLE_SHAPE = 0.42;
    private static final double HEIGHT = 110;
    private static final int MOST_COLUMNS = 4;

    private final FigureContext context;
    private final List<Series> series;

    /**
     * Figures of series under one condition.
     *
     * @param series one for each state
     */
    LevelFigures(FigureContext context, List<Series> series) {
        this.context = context;
        this.series = series.stream().filter(s -> !s.levelSeries().isEmpty()).toList();
    }

    /** Whether level steps were captured. */
    boolean hasSteps() {
        return !series.isEmpty();
    }

    /** All settings. */
    Figure all() {
        Map<OptionalDouble, List<PointSeries>> lines = lines();
        Axis x = axis(context.say("axis.input.peak"), points(lines).map(Point::x));
        Axis y = axis(context.say("axis.output.peak"), points(lines).map(Point::y));
        boolean one = lines.size() == 1;
        List<Panel> panels = new ArrayList<>();
        lines.forEach((gain, states) -> panels.add(
                Panel.of(one ? "" : context.conditions().gain(gain), x, y, List.of(new PointLayer(states)))));
        return new PanelFigure(
                context.title(
                        "figure.levels.title",
                        one ? lines.keySet().iterator().next() : OptionalDouble.empty(),
                        series.get(0).condition()),
                finding(),
                one
                        ? PanelGrid.single(panels.get(0), SINGLE_SHAPE)
                        : PanelGrid.inRows(panels, true, HEIGHT, MOST_COLUMNS),
                series.stream()
                        .map(s -> LegendEntry.points(context.palette().of(s.state())))
                        .toList(),
                List.of());
    }

    private Map<OptionalDouble, List<PointSeries>> lines() {
        Map<OptionalDouble, List<PointSeries>> lines = new LinkedHashMap<>();
        for (Series state : series) {
            for (LevelSeries levels : state.levelSeries()) {
                lines.computeIfAbsent(levels.gainPercent(), g -> new ArrayList<>())
                        .add(new PointSeries(context.palette().of(state.state()), false, true, points(levels)));
            }
        }
        return lines;
    }

    private static List<Point> points(LevelSeries levels) {
        return levels.steps().stream()
                .map(step -> Point.of(step.input(), output(step)))
                .toList();
    }

    private static Measured.Value output(LevelStep step) {
        return step.output().asValue().orElseThrow(() -> new IllegalArgumentException("a level step has an output"));
    }

    private static Stream<Point> points(Map<OptionalDouble, List<PointSeries>> lines) {
        return lines.values().stream().flatMap(List::stream).flatMap(l -> l.points().stream());
    }

    private Axis axis(String quantity, Stream<Double> values) {
        return context.axes().logarithmic(quantity, context.voltage(), Extent.of(values.mapToDouble(v -> v)));
    }

    private String finding() {
        List<String> parts = new ArrayList<>();
        for (Series state : series) {
            for (LevelSeries levels : state.levelSeries()) {
                parts.add(context.say(
                        "figure.levels.state",
                        "state",
                        context.called(state.state()),
                        "input",
                        compression(levels),
                        "condition",
                        context.conditions().gain(levels.gainPercent())));
            }
        }
        return context.say("figure.levels.says", "list", Sentences.parts(parts));
    }

    private String compression(LevelSeries levels) {
        return levels.compressionPoint()
                .asValue()
                .map((Measured.Value v) -> context.values().of(v))
                .orElseGet(() -> context.say("figure.levels.none"));
    }
}
