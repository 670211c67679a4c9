package clipwitness.figure;

import clipwitness.compare.rule.WaveGroup;
import clipwitness.compare.rule.WaveSetting;
import clipwitness.figure.canvas.Figure;
import clipwitness.figure.canvas.StateStyle;
import clipwitness.figure.chart.Axis;
import clipwitness.figure.chart.Bar;
import clipwitness.figure.chart.Extent;
import clipwitness.figure.chart.Layer;
import clipwitness.figure.chart.LegendEntry;
import clipwitness.figure.chart.Lists;
import clipwitness.figure.chart.Panel;
import clipwitness.figure.chart.PanelFigure;
import clipwitness.figure.chart.PanelGrid;
import clipwitness.figure.chart.PointLayer;
import clipwitness.figure.chart.PointSeries;
import clipwitness.measure.Harmonic;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Harmonics over the fundamental as grouped bars with their uncertainty. */
final class HarmonicFigures {
    private static final double SINGLE_SHAPE = 0.42;
    private static final double HEIGHT = 86;

    /** Panels side by side for a number of states up to the key: a bar takes at least a point and a half. */
    private static final NavigableMap<Integer, Integer> MOST_COLUMNS = new TreeMap<>(Map.of(0, 6, 4, 4, 5, 3, 7, 2));

    private static final int MOST_IN_PANELS = 10;
    private static final double GROUP_WIDTH = 0.78;
    private static final double DEEPEST = -100;
    private static final double SHALLOWEST = -40;

    /** Standard uncertainty of the level of an amplitude that is five times its own, dB, to first order: 20 lg e / 5. */
    private static final double CLEAR_DECIBELS = 20 / Math.log(10) / 5;

    private final FigureContext context;
    private final WaveGroup group;

    HarmonicFigures(FigureContext context, WaveGroup group) {
        this.context = context;
        this.group = group.where(HarmonicFigures::hasLevels);
    }

    private static boolean hasLevels(WaveformResult wave) {
        return wave.harmonics().stream().anyMatch(h -> h.level().asValue().isPresent());
    }

    /** Whether any harmonic was measured. */
    boolean hasHarmonics() {
        return !group.settings().isEmpty();
    }

    /** All harmonics at the main setting. */
    Figure chosen() {
        WaveSetting setting = group.chosen();
        return figure(
                context.title("figure.harmonics.title", setting.gainPercent(), group.condition()),
                List.of(setting),
                Integer.MAX_VALUE);
    }

    /** The lower harmonics at every setting. */
    Figure all() {
        return figure(context.title("figure.harmonics-all.title", group.condition()), group.settings(), MOST_IN_PANELS);
    }

    private Figure figure(String title, List<WaveSetting> settings, int most) {
        int last = settings.stream()
                .flatMap(s -> s.waves().values().stream())
                .flatMap(w -> w.harmonics().stream())
                .mapToInt(Harmonic::order)
                .filter(order -> order <= most)
                .max()
                .orElse(2);
        Axis x = orders(last);
        Axis y = levels(settings, last);
        boolean one = most > MOST_IN_PANELS;
        List<Panel> panels = settings.stream()
                .map(s -> Panel.of(
                        one ? "" : context.conditions().gain(s.gainPercent()),
                        x,
                        y,
                        layers(s, last, y.scale().low())))
                .toList();
        return new PanelFigure(
                title,
                finding(one ? group.chosen() : group.further()),
                grid(panels),
                context.palette().entries(group.states(), LegendEntry::bar),
                signs(settings, last));
    }

    private PanelGrid grid(List<Panel> panels) {
        int most = MOST_COLUMNS.floorEntry(group.states().size()).getValue();
        return panels.size() == 1
                ? PanelGrid.single(panels.get(0), SINGLE_SHAPE)
                : PanelGrid.inRows(panels, true, HEIGHT, most);
    }

    private Axis orders(int last) {
        List<Axis.Tick> names = IntStream.rangeClosed(2, last)
                .mapToObj(k -> new Axis.Tick(k, Integer.toString(k)))
                .toList();
        return Axis.named(context.say("axis.harmonic"), new Extent(1.5, last + 0.5), names);
    }

    private Axis levels(List<WaveSetting> settings, int last) {
        Extent all = Extent.over(
                points(settings, last).map(PointSeries.Point::covered).toList());
        double low = Math.max(DEEPEST, Math.min(SHALLOWEST, all.low()));
        return context.axes().round(context.say("axis.level"), Unit.DBC, new Extent(low, Math.max(0, all.high())), 6);
    }

    private static Stream<PointSeries.Point> points(List<WaveSetting> settings, int last) {
        return settings.stream().flatMap(s -> s.waves().values().stream()).flatMap(w -> values(w, last).stream());
    }

    private static List<PointSeries.Point> values(WaveformResult wave, int last) {
        return wave.harmonics().stream()
                .filter(h -> h.order() <= last)
                .flatMap(h -> h.level().asValue().map(v -> PointSeries.Point.of(h.order(), v)).stream())
                .toList();
    }

    private List<Layer> layers(WaveSetting setting, int last, double floor) {
        List<Layer> bars = new ArrayList<>();
        List<PointSeries> tips = new ArrayList<>();
        List<String> states = context.palette().inOrder(group.states());
        double width = GROUP_WIDTH / states.size();
        setting.waves().forEach((state, wave) -> {
            StateStyle style = context.palette().of(state);
            double left = -GROUP_WIDTH / 2 + width * states.indexOf(state);
            List<PointSeries.Point> above = values(wave, last).stream()
                    .filter(p -> p.covered().high() > floor)
                    .map(p -> new PointSeries.Point(p.x() + left + width / 2, p.y(), p.uncertainty(), p.upperBound()))
                    .toList();
            above.stream()
                    .filter(p -> !p.upperBound())
                    .forEach(p -> bars.add(new Bar(style, p.x() - width * 0.42, p.x() + width * 0.42, p.y())));
            if (!above.isEmpty()) {
                tips.add(new PointSeries(style, false, false, above));
            }
        });
        return Lists.joined(bars, List.of(new PointLayer(tips)));
    }

    private List<LegendEntry> signs(List<WaveSetting> settings, int last) {
        boolean bounds = points(settings, last).anyMatch(PointSeries.Point::upperBound);
        return bounds ? List.of(LegendEntry.bound(context.say("legend.bound"))) : List.of();
    }

    private static boolean isClear(Harmonic harmonic) {
        return harmonic.level()
                .asValue()
                .filter(v -> v.standardUncertainty() < CLEAR_DECIBELS)
                .isPresent();
    }

    private String strongest(String state, Harmonic harmonic) {
        String level = context.values().of(harmonic.level().asValue().orElseThrow());
        return context.say(
                "figure.harmonics.state",
                "state",
                context.called(state),
                "order",
                Integer.toString(harmonic.order()),
                "level",
                level);
    }

    private String finding(WaveSetting setting) {
        List<String> parts = new ArrayList<>();
        setting.waves()
                .forEach((state, wave) -> wave.harmonics().stream()
                        .filter(h -> h.level()
                                .asValue()
                                .filter(v -> !v.isUpperBound())
                                .isPresent())
                        .max(Comparator.comparingDouble(h -> h.level().value().orElseThrow()))
                        .filter(HarmonicFigures::isClear)
                        .ifPresent(h -> parts.add(strongest(state, h))));
        return context.tell(
                parts.isEmpty() ? "figure.harmonics.says.none" : "figure.harmonics.says", setting.gainPercent(), parts);
    }
}
