package clipwitness.figure;

import clipwitness.capture.Samples;
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
import clipwitness.measure.Measured;
import clipwitness.measure.TransferCurve;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Output against input with the onset of clipping marked. */
final class TransferFigures {
    private static final double SINGLE_SHAPE = 0.5;
    private static final double PANEL_SHAPE = 0.8;
    private static final int MOST_COLUMNS = 3;

    private final FigureContext context;
    private final WaveGroup group;

    TransferFigures(FigureContext context, WaveGroup group) {
        this.context = context;
        this.group = group.where(wave -> wave.transfer().isPresent());
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
                1,
                6,
                false);
    }

    /** The curves at every setting. */
    Figure all() {
        int columns = Math.min(MOST_COLUMNS, group.settings().size());
        return figure(
                context.title("figure.transfer-all.title", group.condition()), group.settings(), columns, 4, true);
    }

    private Figure figure(String title, List<WaveSetting> settings, int columns, int steps, boolean headings) {
        Axis x = context.input(range(settings, true), steps);
        Axis y = context.output(range(settings, false), steps);
        List<Panel> panels = settings.stream()
                .map(s -> Panel.of(headings ? context.conditions().gain(s.gainPercent()) : "", x, y, layers(s)))
                .toList();
        List<LegendEntry> signs =
                settings.stream().flatMap(s -> onsets(s).stream()).findAny().isPresent()
                        ? List.of(LegendEntry.marker(context.say("legend.onset"), true))
                        : List.of();
        return new PanelFigure(
                title,
                finding(headings ? group.further() : group.chosen()),
                new PanelGrid(panels, columns, true, columns == 1 ? SINGLE_SHAPE : PANEL_SHAPE),
                context.palette().entries(group.states(), LegendEntry::line),
                signs);
    }

    private static Extent range(List<WaveSetting> settings, boolean input) {
        return Extent.ofAll(settings.stream()
                .flatMap(s -> s.waves().values().stream())
                .map(w -> w.transfer().orElseThrow())
                .flatMap(t -> input ? Stream.of(t.input()) : outputs(t)));
    }

    private static Stream<Samples> outputs(TransferCurve curve) {
        return Stream.concat(
                Stream.of(curve.output()), curve.loop().stream().flatMap(l -> Stream.of(l.rising(), l.falling())));
    }

    private List<Layer> layers(WaveSetting setting) {
        List<Layer> curves = new ArrayList<>();
        setting.waves().forEach((state, wave) -> {
            TransferCurve curve = wave.transfer().orElseThrow();
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
        return Lists.joined(curves, onsets(setting));
    }

    private List<Marker> onsets(WaveSetting setting) {
        List<Marker> marks = new ArrayList<>();
        setting.waves().forEach((state, wave) -> {
            mark(state, wave, WaveformQuantity.ONSET_UP, 1).ifPresent(marks::add);
            mark(state, wave, WaveformQuantity.ONSET_DOWN, -1).ifPresent(marks::add);
        });
        return marks;
    }

    private Optional<Marker> mark(String state, WaveformResult wave, WaveformQuantity onset, int side) {
        TransferCurve curve = wave.transfer().orElseThrow();
        return wave.get(onset)
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

    private String finding(WaveSetting setting) {
        List<String> parts = new ArrayList<>();
        for (String state : setting.waves().keySet()) {
            parts.add(context.say(
                    "figure.transfer.state",
                    "state",
                    context.called(state),
                    "upper",
                    onset(setting, state, WaveformQuantity.ONSET_UP),
                    "lower",
                    onset(setting, state, WaveformQuantity.ONSET_DOWN)));
        }
        return context.tell("figure.transfer.says", setting.gainPercent(), parts) + loops(setting);
    }

    /** What the branches that part mean, where there are any. */
    private String loops(WaveSetting setting) {
        List<String> straightened = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        setting.waves()
                .forEach((state, wave) -> wave.transfer()
                        .filter(t -> t.loop().isPresent())
                        .ifPresent(t -> (t.follows() ? straightened : refused).add(context.called(state))));
        return loops("figure.transfer.straightened", straightened) + loops("figure.transfer.refused", refused);
    }

    private String loops(String name, List<String> states) {
        return states.isEmpty() ? "" : " " + context.say(name, "list", String.join(", ", states));
    }

    private String onset(WaveSetting setting, String state, WaveformQuantity quantity) {
        return setting.waves()
                .get(state)
                .get(quantity)
                .asValue()
                .map((Measured.Value v) -> context.values().of(v))
                .orElseGet(() -> context.say("figure.transfer.none"));
    }
}
