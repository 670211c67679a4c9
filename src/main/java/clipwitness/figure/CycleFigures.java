package clipwitness.figure;

import clipwitness.capture.Condition;
import clipwitness.capture.Samples;
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
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import java.util.ArrayList;
import java.util.List;

/** Mean cycles of all states over one another, at one setting of the gain control or at all. */
final class CycleFigures {
    private static final double SINGLE_SHAPE = 0.46;
    private static final double PANEL_SHAPE = 0.62;
    private static final int MOST_COLUMNS = 3;

    private final FigureContext context;
    private final WaveGroup group;

    CycleFigures(FigureContext context, WaveGroup group) {
        this.context = context;
        this.group = group;
    }

    /** The cycles at the main setting. */
    Figure chosen() {
        WaveSetting setting = group.chosen();
        Axis y = context.output(range(List.of(setting)), 6);
        Panel panel = Panel.of("", Cycles.timeAxis(context, setting, 8), y, curves(setting));
        return new PanelFigure(
                context.title("figure.cycles-main.title", setting.gainPercent(), group.condition()),
                finding(setting),
                PanelGrid.single(panel, SINGLE_SHAPE),
                legend(),
                List.of());
    }

    /** The cycles at every setting, all to one scale. */
    Figure all() {
        Axis y = context.output(range(group.settings()), 5);
        List<Panel> panels = group.settings().stream()
                .map(s -> Panel.of(
                        context.conditions().gain(s.gainPercent()),
                        Cycles.timeAxis(context, group.settings().get(0), 4),
                        y,
                        curves(s)))
                .toList();
        return new PanelFigure(
                context.title("figure.cycles.title", group.condition()),
                allFinding(),
                new PanelGrid(panels, Math.min(MOST_COLUMNS, panels.size()), true, PANEL_SHAPE),
                legend(),
                List.of());
    }

    private List<LegendEntry> legend() {
        return context.palette().entries(group.states(), LegendEntry::line);
    }

    /** The cycles of a setting as they were captured. */
    List<Curve> curves(WaveSetting setting) {
        List<Curve> curves = new ArrayList<>();
        setting.waves()
                .forEach((state, wave) -> curves.add(curve(context.palette().of(state), wave)));
        return curves;
    }

    private static Curve curve(StateStyle style, WaveformResult wave) {
        CycleTrace cycle = wave.cycle().orElseThrow();
        Samples swing = Cycles.closed(cycle.swing());
        return new Curve(style, Cycles.times(cycle, Cycles.period(wave)), swing);
    }

    static Extent range(List<WaveSetting> settings) {
        return Extent.ofAll(settings.stream()
                .flatMap(s -> s.waves().values().stream())
                .map(w -> w.cycle().orElseThrow().swing()));
    }

    /** Level and distortion of the compared states at a setting. */
    String finding(WaveSetting setting) {
        Condition condition = group.conditionOf(setting);
        List<String> parts = context.comparisons().levelAndDistortion(condition);
        if (parts.isEmpty()) {
            parts = levels(setting);
        }
        return says(setting, parts);
    }

    private List<String> levels(WaveSetting setting) {
        List<String> parts = new ArrayList<>();
        for (String state : setting.waves().keySet()) {
            parts.add(context.say(
                    "figure.levels",
                    "state",
                    context.called(state),
                    "level",
                    value(setting, state, WaveformQuantity.RMS),
                    "thd",
                    value(setting, state, WaveformQuantity.THD)));
        }
        return parts;
    }

    private String value(WaveSetting setting, String state, WaveformQuantity quantity) {
        return setting.value(state, quantity).map(context.values()::of).orElse("");
    }

    private String says(WaveSetting setting, List<String> parts) {
        return context.tell("figure.cycles.says", setting.gainPercent(), parts);
    }

    private String allFinding() {
        WaveSetting first = group.settings().get(0);
        WaveSetting last = group.settings().get(group.settings().size() - 1);
        String from = says(first, levels(first));
        return first.equals(last) ? from : from + " " + says(last, levels(last));
    }
}
