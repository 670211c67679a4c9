package clipwitness.figure;

import clipwitness.capture.Condition;
import clipwitness.capture.Samples;
import clipwitness.compare.finding.Items;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.result.Item;
import clipwitness.compare.result.StateResponse;
import clipwitness.figure.canvas.Figure;
import clipwitness.figure.chart.Axis;
import clipwitness.figure.chart.Curve;
import clipwitness.figure.chart.Extent;
import clipwitness.figure.chart.Layer;
import clipwitness.figure.chart.LegendEntry;
import clipwitness.figure.chart.LimitBand;
import clipwitness.figure.chart.Panel;
import clipwitness.figure.chart.PanelFigure;
import clipwitness.figure.chart.PanelGrid;
import clipwitness.figure.chart.PointLayer;
import clipwitness.figure.chart.PointSeries;
import clipwitness.figure.chart.PointSeries.Point;
import clipwitness.measure.Measured;
import clipwitness.measure.response.ResponsePoint;
import clipwitness.quantity.ItemQuantity;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** Gain of all states over frequency, and below it the change of each compared state with the band of the limit; a panel for each condition. */
final class ResponseFigures {
    private static final double SINGLE_SHAPE = 0.4;
    private static final double HEIGHT = 150;
    private static final int MOST_COLUMNS = 3;
    private static final int STEPS = 5;

    /** Space about a curve that is all but level, dB. */
    private static final double LEAST_SPAN = 3;

    private final FigureContext context;
    private final List<StateResponse> responses;

    ResponseFigures(FigureContext context) {
        this.context = context;
        this.responses = context.results().responses().stream()
                .filter(r -> r.curve().measured().size() > 1)
                .toList();
    }

    /** Whether there is a curve to show. */
    boolean hasCurves() {
        return !responses.isEmpty();
    }

    /** The curves. */
    Figure all() {
        List<Condition> conditions =
                responses.stream().map(StateResponse::condition).distinct().toList();
        boolean single = conditions.size() == 1;
        Axis x = context.axes()
                .logarithmic(
                        context.say("axis.frequency"),
                        Unit.HERTZ,
                        Extent.of(responses.stream()
                                .flatMap(r -> r.curve().measured().stream())
                                .mapToDouble(ResponsePoint::frequency)));
        List<Panel> panels = conditions.stream().map(c -> panel(c, x, single)).toList();
        Set<String> states =
                responses.stream().map(StateResponse::state).collect(Collectors.toCollection(LinkedHashSet::new));
        return new PanelFigure(
                context.title(
                        "figure.response.title",
                        single ? conditions.get(0).gainPercent() : OptionalDouble.empty(),
                        context.main().withoutGain()),
                finding(),
                single
                        ? PanelGrid.single(panels.get(0), SINGLE_SHAPE)
                        : PanelGrid.inRows(panels, true, HEIGHT, MOST_COLUMNS),
                context.palette().entries(states, LegendEntry::points),
                List.of());
    }

    private Panel panel(Condition condition, Axis x, boolean single) {
        List<StateResponse> here =
                responses.stream().filter(r -> r.condition().equals(condition)).toList();
        String heading = single ? "" : context.conditions().gain(condition.gainPercent());
        List<Panel.Tier> tiers = new ArrayList<>();
        tiers.add(new Panel.Tier(gainAxis(), 2, here.stream().map(this::gain).toList()));
        List<PointSeries> changes = changes(condition);
        if (!changes.isEmpty()) {
            double limit = limit();
            Extent shown = Extent.over(changes.stream()
                            .flatMap(s -> s.points().stream())
                            .map(Point::covered)
                            .toList())
                    .with(1.5 * limit)
                    .with(-1.5 * limit);
            Axis y = context.axes().round(context.say("axis.change"), Unit.DECIBEL, shown, STEPS);
            List<Layer> layers = List.of(new LimitBand(limit), new PointLayer(changes));
            tiers.add(new Panel.Tier(y, 1.2, layers));
        }
        return new Panel(heading, x, tiers);
    }

    private double limit() {
        return context.results()
                .job()
                .sheet()
                .limits()
                .of(ItemQuantity.RESPONSE.limit().orElseThrow());
    }

    private Axis gainAxis() {
        Extent all = Extent.of(responses.stream()
                .flatMap(r -> r.curve().measured().stream())
                .mapToDouble(p -> p.gain().value().orElseThrow()));
        return context.axes()
                .round(
                        context.say("axis.response"),
                        Unit.DECIBEL,
                        all.widened(LEAST_SPAN).padded(0.04),
                        STEPS);
    }

    private Layer gain(StateResponse response) {
        List<ResponsePoint> points = response.curve().measured();
        if (response.swept()) {
            return new Curve(
                    context.palette().of(response.state()),
                    Samples.of(points.stream()
                            .mapToDouble(ResponsePoint::frequency)
                            .toArray()),
                    Samples.of(points.stream()
                            .mapToDouble(p -> p.gain().value().orElseThrow())
                            .toArray()));
        }
        List<Point> marks = points.stream()
                .map(p -> Point.of(p.frequency(), p.gain().asValue().orElseThrow()))
                .toList();
        return new PointLayer(List.of(new PointSeries(context.palette().of(response.state()), false, true, marks)));
    }

    private List<PointSeries> changes(Condition condition) {
        List<PointSeries> changes = new ArrayList<>();
        for (Comparison c : context.results().comparisons()) {
            List<Point> points = Items.measured(c, ItemQuantity.RESPONSE).stream()
                    .filter(i -> open(i.condition()).equals(condition))
                    .sorted(Comparator.comparingDouble(
                            i -> i.condition().frequency().orElseThrow()))
                    .map(i -> Point.of(
                            i.condition().frequency().orElseThrow(),
                            i.change().asValue().orElseThrow()))
                    .toList();
            if (!points.isEmpty()) {
                changes.add(new PointSeries(context.palette().of(c.to()), false, true, points));
            }
        }
        return changes;
    }

    private static Condition open(Condition c) {
        return new Condition(c.gainPercent(), OptionalDouble.empty(), c.level(), c.setting());
    }

    private String finding() {
        List<String> parts = new ArrayList<>();
        for (Comparison c : context.results().comparisons()) {
            List<Item> items = Items.measured(c, ItemQuantity.RESPONSE);
            if (!items.isEmpty()) {
                Item most = Items.farthest(items);
                Measured.Value change = most.change().asValue().orElseThrow();
                parts.add(context.say(
                        "figure.response.change",
                        "to",
                        context.called(c.to()),
                        "from",
                        context.called(c.from()),
                        "change",
                        context.values().of(change),
                        "frequency",
                        context.numbers().frequency(most.condition().frequency().orElseThrow())));
            }
        }
        return parts.isEmpty()
                ? context.say("figure.response.alone")
                : context.say("figure.response.says", "list", Sentences.parts(parts));
    }
}
