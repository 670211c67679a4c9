package clipwitness.figure;

import clipwitness.compare.finding.Told;
import clipwitness.compare.result.Series;
import clipwitness.compare.result.SeriesPoint;
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
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** Figures of the states against the gain control. */
final class SeriesFigures {
    private static final double SINGLE_SHAPE = 0.42;
    private static final double HEIGHT = 78;
    private static final int MOST_COLUMNS = 3;
    private static final int MOST_COLUMNS_OF_MANY = 4;
    private static final int MANY = 7;

    /** With more states than this the halves of a quantity have a panel each. */
    private static final int MOST_TOGETHER = 3;

    private static final int MOST_POSITIONS = 6;
    private static final double SIDESTEP = 0.009;
    private static final double NARROW_SIDESTEP = 0.013;

    private final FigureContext context;
    private final List<Series> series;
    private final Axis gain;

    /**
     * Figures of series under one condition.
     *
     * @param series one for each state, with at least two settings among them
     */
    SeriesFigures(FigureContext context, List<Series> series) {
        this.context = context;
        this.series = List.copyOf(series);
        Extent settings =
                Extent.of(series.stream().flatMap(s -> s.points().stream()).mapToDouble(SeriesPoint::gainPercent));
        this.gain = gainAxis(settings);
    }

    private Axis gainAxis(Extent settings) {
        List<Double> positions = series.stream()
                .flatMap(s -> s.points().stream())
                .map(SeriesPoint::gainPercent)
                .distinct()
                .sorted()
                .toList();
        Extent padded = settings.widened(1).padded(0.035);
        Axis round = context.axes().exact(context.say("axis.gain"), Unit.PERCENT, padded, 6);
        return positions.size() > MOST_POSITIONS
                ? round
                : Axis.named(
                        round.label(),
                        padded,
                        positions.stream().map(context.axes()::tick).toList());
    }

    /** Whether a quantity was measured at two settings or more. */
    boolean has(SeriesQuantity quantity) {
        Set<Double> settings = new LinkedHashSet<>();
        for (Series one : series) {
            for (SeriesPoint point : one.points()) {
                if (quantity.quantities().stream().anyMatch(q -> value(point, q).isPresent())) {
                    settings.add(point.gainPercent());
                }
            }
        }
        return settings.size() >= 2;
    }

    /** One quantity. */
    Figure of(SeriesQuantity quantity) {
        boolean apart = isApart(quantity);
        List<Panel> panels = apart
                ? panels(quantity, NARROW_SIDESTEP)
                : List.of(panel(quantity, quantity.quantities(), "", 6, SIDESTEP));
        return new PanelFigure(
                title("figure.series.title", "quantity", capital(quantity)),
                finding(quantity),
                apart
                        ? PanelGrid.inRows(panels, false, HEIGHT, MOST_COLUMNS)
                        : PanelGrid.single(panels.get(0), SINGLE_SHAPE),
                legend(),
                signs(List.of(quantity)));
    }

    /** Several quantities, a panel each. */
    Figure of(List<SeriesQuantity> quantities) {
        List<Panel> panels = quantities.stream()
                .flatMap(q -> panels(q, NARROW_SIDESTEP).stream())
                .toList();
        return new PanelFigure(
                title("figure.series.all.title"),
                panelsFinding(quantities),
                PanelGrid.inRows(panels, false, HEIGHT, panels.size() < MANY ? MOST_COLUMNS : MOST_COLUMNS_OF_MANY),
                legend(),
                signs(quantities));
    }

    /** Whether a quantity's halves have a panel each: with many states one panel would hold too many lines. */
    private boolean isApart(SeriesQuantity quantity) {
        return quantity.hasHalves() && legend().size() > MOST_TOGETHER;
    }

    private List<Panel> panels(SeriesQuantity quantity, double sidestep) {
        if (!isApart(quantity)) {
            return List.of(panel(quantity, quantity.quantities(), capital(quantity), 4, sidestep));
        }
        List<Panel> panels = new ArrayList<>();
        for (int half = 0; half < quantity.quantities().size(); half++) {
            List<WaveformQuantity> one = quantity.quantities().subList(half, half + 1);
            if (!lines(one, 0).isEmpty()) {
                String heading = context.say(
                        "series.half." + quantity.key(),
                        "half",
                        context.say(half == 0 ? "legend.upper" : "legend.lower"));
                panels.add(panel(quantity, one, heading, 4, sidestep));
            }
        }
        return panels;
    }

    private String title(String name, String... holes) {
        String other = context.conditions().difference(series.get(0).condition(), context.main());
        return context.say(
                name, Stream.concat(Stream.of("other", other), Stream.of(holes)).toArray(String[]::new));
    }

    private String words(SeriesQuantity quantity) {
        return context.say("series.name." + quantity.key());
    }

    private String capital(SeriesQuantity quantity) {
        return Sentences.capital(words(quantity));
    }

    private List<LegendEntry> legend() {
        Set<String> states = new LinkedHashSet<>();
        series.forEach(s -> states.add(s.state()));
        return context.palette().entries(states, LegendEntry::points);
    }

    private List<LegendEntry> signs(List<SeriesQuantity> quantities) {
        List<LegendEntry> signs = new ArrayList<>();
        if (quantities.stream().anyMatch(q -> q.hasHalves() && !isApart(q))) {
            signs.add(LegendEntry.marker(context.say("legend.upper"), false));
            signs.add(LegendEntry.marker(context.say("legend.lower"), true));
        }
        if (quantities.stream().anyMatch(this::hasBounds)) {
            signs.add(LegendEntry.bound(context.say("legend.bound")));
        }
        return signs;
    }

    private boolean hasBounds(SeriesQuantity quantity) {
        return lines(quantity.quantities(), 0).stream()
                .flatMap(l -> l.points().stream())
                .anyMatch(Point::upperBound);
    }

    private Panel panel(
            SeriesQuantity quantity, List<WaveformQuantity> shown, String heading, int steps, double sidestep) {
        List<PointSeries> lines = lines(shown, sidestep);
        Extent range = Extent.over(lines.stream()
                .flatMap(l -> l.points().stream())
                .map(Point::covered)
                .toList());
        return Panel.of(
                heading,
                gain,
                quantity.axis(context, range, hasBounds(quantity), steps),
                List.of(new PointLayer(lines)));
    }

    private List<PointSeries> lines(List<WaveformQuantity> quantities, double sidestep) {
        List<PointSeries> lines = new ArrayList<>();
        for (int i = 0; i < series.size(); i++) {
            double aside = (i - (series.size() - 1) / 2.0)
                    * sidestep
                    * (gain.scale().high() - gain.scale().low());
            for (int q = 0; q < quantities.size(); q++) {
                List<Point> points = points(series.get(i), quantities.get(q), aside);
                if (!points.isEmpty()) {
                    lines.add(new PointSeries(context.palette().of(series.get(i).state()), q > 0, true, points));
                }
            }
        }
        return lines;
    }

    private static List<Point> points(Series one, WaveformQuantity quantity, double aside) {
        return one.points().stream()
                .flatMap(p -> value(p, quantity).map(v -> Point.of(p.gainPercent() + aside, v)).stream())
                .toList();
    }

    /** A figure as it was measured; empty where the tables refuse to tell it. */
    private static Optional<Measured.Value> value(SeriesPoint point, WaveformQuantity quantity) {
        Measured found = point.values().get(quantity);
        return found == null || Told.figure(quantity, found).asValue().isEmpty() ? Optional.empty() : found.asValue();
    }

    private String finding(SeriesQuantity quantity) {
        List<String> parts = new ArrayList<>();
        WaveformQuantity first = quantity.quantities().get(0);
        for (Series one : series) {
            List<SeriesPoint> known = one.points().stream()
                    .filter(p -> value(p, first).isPresent())
                    .toList();
            if (!known.isEmpty()) {
                parts.add(context.say(
                        "figure.series.state",
                        "state",
                        context.called(one.state()),
                        "first",
                        at(known.get(0), first),
                        "last",
                        known.size() == 1 ? "" : at(known.get(known.size() - 1), first)));
            }
        }
        return context.say(
                quantity.hasHalves() ? "figure.series.says.upper" : "figure.series.says",
                "quantity",
                capital(quantity),
                "list",
                Sentences.parts(parts));
    }

    private String panelsFinding(List<SeriesQuantity> quantities) {
        List<SeriesQuantity> told = quantities.subList(0, Math.min(2, quantities.size()));
        String sentences = String.join(" ", told.stream().map(this::finding).toList());
        List<String> rest =
                quantities.stream().skip(told.size()).map(this::words).toList();
        return rest.isEmpty()
                ? sentences
                : sentences + " " + context.say("figure.series.also", "list", String.join(", ", rest));
    }

    private String at(SeriesPoint point, WaveformQuantity quantity) {
        return context.say(
                "figure.value.at",
                "value",
                context.values().of(value(point, quantity).orElseThrow()),
                "condition",
                context.conditions().gain(OptionalDouble.of(point.gainPercent())));
    }
}
