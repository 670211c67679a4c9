package clipwitness.figure;

import clipwitness.capture.Samples;
import clipwitness.compare.finding.Told;
import clipwitness.compare.rule.WaveGroup;
import clipwitness.compare.rule.WaveSetting;
import clipwitness.figure.canvas.Figure;
import clipwitness.figure.canvas.StateStyle;
import clipwitness.figure.chart.Axis;
import clipwitness.figure.chart.Curve;
import clipwitness.figure.chart.Extent;
import clipwitness.figure.chart.Layer;
import clipwitness.figure.chart.LegendEntry;
import clipwitness.figure.chart.Lists;
import clipwitness.figure.chart.Marker;
import clipwitness.figure.chart.Panel;
import clipwitness.figure.chart.PanelFigure;
import clipwitness.figure.chart.PanelGrid;
import clipwitness.measure.TransferCurve;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Output against input with the onset of clipping marked. */
final class TransferFigures {
    private static final double SINGLE_SHAPE = 0.5;
    private static final double SINGLE_TIERED_SHAPE = 0.54;
    private static final double HEIGHT = 86;
    private static final double TIERED_HEIGHT = 130;

    /** Height of the plot of the states that dwarf the others, over that of the others. */
    private static final double SHARE_OF_LARGE = 0.7;

    private final FigureContext context;
    private final WaveGroup group;
    private final ScaleGroups scales;

    TransferFigures(FigureContext context, WaveGroup group) {
        this.context = context;
        this.group = group.where(wave -> wave.transfer().isPresent());
        this.scales = ScaleGroups.of(sizes(), context.palette());
    }

    private Map<String, Double> sizes() {
        Map<String, Double> sizes = new LinkedHashMap<>();
        for (WaveSetting setting : group.settings()) {
            setting.waves().forEach((state, wave) -> {
                Extent reached = Extent.ofAll(outputs(wave.transfer().orElseThrow()));
                sizes.merge(state, Math.max(reached.high(), -reached.low()), Math::max);
            });
        }
        return sizes;
    }

    /** Whether any capture has an input channel. */
    boolean hasCurves() {
        return !group.settings().isEmpty();
    }

    /** The curves at the main setting. */
    Figure chosen() {
        WaveSetting setting = group.chosen();
        return figure(
                context.title("figure.transfer.title", setting.gainPercent(), group.condition()),
                List.of(setting),
                6,
                false);
    }

    /** The curves at every setting. */
    Figure all() {
        return figure(context.title("figure.transfer-all.title", group.condition()), group.settings(), 4, true);
    }

    private Figure figure(String title, List<WaveSetting> settings, int steps, boolean headings) {
        Axis x = context.input(range(settings, group.states(), true), steps);
        List<Axis> y = scales.groups().stream()
                .map(states -> context.output(range(settings, states, false), steps))
                .toList();
        List<Panel> panels = settings.stream()
                .map(s -> new Panel(headings ? context.conditions().gain(s.gainPercent()) : "", x, tiers(s, y)))
                .toList();
        return new PanelFigure(
                title,
                new TransferWords(context).of(headings ? group.further() : group.chosen()) + scales.finding(context),
                grid(panels),
                context.palette().entries(group.states(), LegendEntry::line),
                Lists.joined(signs(settings), scales.legend(context)));
    }

    private PanelGrid grid(List<Panel> panels) {
        boolean tiered = scales.groups().size() > 1;
        return panels.size() == 1
                ? PanelGrid.single(panels.get(0), tiered ? SINGLE_TIERED_SHAPE : SINGLE_SHAPE)
                : PanelGrid.inRows(panels, true, tiered ? TIERED_HEIGHT : HEIGHT);
    }

    private List<LegendEntry> signs(List<WaveSetting> settings) {
        boolean marked =
                settings.stream().anyMatch(s -> !onsets(s, s.waves().keySet()).isEmpty());
        return marked ? List.of(LegendEntry.marker(context.say("legend.onset"), true)) : List.of();
    }

    private List<Panel.Tier> tiers(WaveSetting setting, List<Axis> axes) {
        List<Panel.Tier> tiers = new ArrayList<>();
        for (int i = 0; i < axes.size(); i++) {
            double weight = i < axes.size() - 1 ? SHARE_OF_LARGE : 1;
            tiers.add(new Panel.Tier(
                    axes.get(i), weight, layers(setting, scales.groups().get(i))));
        }
        return tiers;
    }

    private Extent range(List<WaveSetting> settings, Collection<String> states, boolean input) {
        List<TransferCurve> curves = settings.stream()
                .flatMap(s -> states.stream()
                        .flatMap(state -> Stream.ofNullable(s.waves().get(state))))
                .map(w -> w.transfer().orElseThrow())
                .toList();
        return curves.isEmpty()
                ? range(group.settings(), states, input)
                : Extent.ofAll(curves.stream().flatMap(t -> input ? Stream.of(t.input()) : outputs(t)));
    }

    private static Stream<Samples> outputs(TransferCurve curve) {
        return Stream.concat(
                Stream.of(curve.output()), curve.loop().stream().flatMap(l -> Stream.of(l.rising(), l.falling())));
    }

    private List<Layer> layers(WaveSetting setting, List<String> states) {
        List<Layer> curves = new ArrayList<>();
        states.stream().filter(setting.waves()::containsKey).forEach(state -> {
            TransferCurve curve = setting.waves().get(state).transfer().orElseThrow();
            StateStyle style = context.palette().of(state);
            StateStyle ofBranches = curve.follows() ? style.pale() : style;
            curve.loop()
                    .ifPresent(loop -> curves.addAll(List.of(
                            new Curve(ofBranches, curve.input(), loop.rising()),
                            new Curve(ofBranches, curve.input(), loop.falling()))));
            if (curve.follows()) {
                curves.add(new Curve(style, curve.input(), curve.output()));
            }
        });
        return Lists.joined(curves, onsets(setting, states));
    }

    private List<Marker> onsets(WaveSetting setting, Collection<String> states) {
        List<Marker> marks = new ArrayList<>();
        states.stream().filter(setting.waves()::containsKey).forEach(state -> {
            WaveformResult wave = setting.waves().get(state);
            mark(state, wave, WaveformQuantity.ONSET_UP, 1).ifPresent(marks::add);
            mark(state, wave, WaveformQuantity.ONSET_DOWN, -1).ifPresent(marks::add);
        });
        return marks;
    }

    private Optional<Marker> mark(String state, WaveformResult wave, WaveformQuantity onset, int side) {
        TransferCurve curve = wave.transfer().orElseThrow();
        return Told.figure(onset, wave.get(onset))
                .asValue()
                .map(v -> side * v.number())
                .filter(x -> x >= curve.input().minimum() && x <= curve.input().maximum())
                .map(x -> new Marker(context.palette().of(state), x, between(curve, x), true));
    }

    private static double between(TransferCurve curve, double x) {
        Samples input = curve.input();
        int i = 1;
        while (i < input.size() - 1 && input.at(i) < x) {
            i++;
        }
        double step = input.at(i) - input.at(i - 1);
        double part = step > 0 ? (x - input.at(i - 1)) / step : 0;
        return (1 - part) * curve.output().at(i - 1) + part * curve.output().at(i);
    }
}
