package clipwitness.figure;

import clipwitness.capture.Samples;
import clipwitness.compare.result.Comparison;
import clipwitness.compare.rule.WaveGroup;
import clipwitness.compare.rule.WaveSetting;
import clipwitness.figure.canvas.Figure;
import clipwitness.figure.canvas.StateStyle;
import clipwitness.figure.chart.Axis;
import clipwitness.figure.chart.Curve;
import clipwitness.figure.chart.Extent;
import clipwitness.figure.chart.LegendEntry;
import clipwitness.figure.chart.Panel;
import clipwitness.figure.chart.PanelFigure;
import clipwitness.figure.chart.PanelGrid;
import clipwitness.measure.CycleTrace;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Mean cycles of all states, each over its own rms, with what the compared states then differ by. */
final class MatchedFigures {
    private static final double HEIGHT = 116;
    private static final double WIDE_SHAPE = 0.55;
    private static final double WAVES_WEIGHT = 1.7;

    private final FigureContext context;
    private final WaveGroup group;

    MatchedFigures(FigureContext context, WaveGroup group) {
        this.context = context;
        this.group = group.where(MatchedFigures::hasRms);
    }

    private static boolean hasRms(WaveformResult wave) {
        return wave.get(WaveformQuantity.RMS)
                .asValue()
                .filter(v -> v.number() > 0)
                .isPresent();
    }

    /** Whether there are two waves to set side by side. */
    boolean hasPairs() {
        return group.settings().stream().anyMatch(s -> !differences(s).isEmpty());
    }

    /** Those waves of a setting that have a level. */
    WaveSetting levelled(WaveSetting setting) {
        return setting.where(MatchedFigures::hasRms);
    }

    /** The cycles at every setting where there are two or more. */
    Figure all() {
        List<WaveSetting> settings =
                group.settings().stream().filter(s -> !differences(s).isEmpty()).toList();
        Axis waves = axis(context.say("axis.output.matched"), settings.stream().flatMap(s -> matched(s).stream()), 4);
        Axis rest = axis(
                context.say("axis.difference.matched"), settings.stream().flatMap(s -> differences(s).stream()), 2);
        Axis time = Cycles.timeAxis(context, settings.get(0), 4);
        List<Panel> panels = settings.stream()
                .map(s -> new Panel(
                        context.conditions().gain(s.gainPercent()),
                        time,
                        List.of(
                                new Panel.Tier(waves, WAVES_WEIGHT, matched(s)),
                                new Panel.Tier(rest, 1, differences(s)))))
                .toList();
        return new PanelFigure(
                context.title("figure.cycles-matched.title", group.condition()),
                finding(settings),
                grid(panels),
                context.palette().entries(group.states(), LegendEntry::line),
                List.of());
    }

    private static PanelGrid grid(List<Panel> panels) {
        return panels.size() == 1
                ? PanelGrid.single(panels.get(0), WIDE_SHAPE)
                : PanelGrid.inRows(panels, true, HEIGHT);
    }

    private Axis axis(String label, Stream<Curve> curves, int steps) {
        return context.axes().round(label, Unit.ONE, Extent.ofAll(curves.map(Curve::y)), steps);
    }

    /** The cycles of a setting, each over its own rms. */
    List<Curve> matched(WaveSetting setting) {
        List<Curve> curves = new ArrayList<>();
        setting.waves().forEach((state, wave) -> {
            double rms = rms(wave);
            CycleTrace cycle = wave.cycle().orElseThrow();
            Samples swing = Cycles.closed(cycle.swing()).map(v -> v / rms);
            curves.add(new Curve(context.palette().of(state), Cycles.times(cycle, Cycles.period(wave)), swing));
        });
        return curves;
    }

    /** What is left between the compared states of a setting. */
    List<Curve> differences(WaveSetting setting) {
        List<Curve> curves = new ArrayList<>();
        Map<String, WaveformResult> waves = setting.waves();
        for (Comparison comparison : context.results().comparisons()) {
            WaveformResult from = waves.get(comparison.from());
            WaveformResult to = waves.get(comparison.to());
            boolean drawn = curves.stream()
                    .anyMatch(c -> c.style().equals(context.palette().of(comparison.to())));
            if (from != null && to != null && !drawn) {
                curves.add(difference(context.palette().of(comparison.to()), to, from));
            }
        }
        return curves;
    }

    private static Curve difference(StateStyle style, WaveformResult to, WaveformResult from) {
        CycleTrace cycle = to.cycle().orElseThrow();
        Samples other = from.cycle().orElseThrow().swing();
        int bins = cycle.swing().size();
        double[] rest = new double[bins];
        Arrays.setAll(rest, i -> cycle.swing().at(i) / rms(to) - Cycles.at(other, (i + 0.5) / bins) / rms(from));
        return new Curve(style, Cycles.times(cycle, Cycles.period(to)), Cycles.closed(Samples.of(rest)));
    }

    private static double rms(WaveformResult wave) {
        return wave.get(WaveformQuantity.RMS)
                .asValue()
                .map(Measured.Value::number)
                .orElseThrow();
    }

    private String finding(List<WaveSetting> settings) {
        return context.comparisons()
                .remainders(settings.stream().map(group::conditionOf).toList())
                .orElseGet(() -> context.say("figure.matched.says.none"));
    }
}
