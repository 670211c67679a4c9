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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Mean cycles of all states over one another, at one setting of the gain control or at all. */
final class CycleFigures {
    private static final double SINGLE_SHAPE = 0.46;
    private static final double TIERED_SHAPE = 0.6;
    private static final double HEIGHT = 86;
    private static final double TIERED_HEIGHT = 118;

    /** Height of the plot of the states that dwarf the others, over that of the others. */
    private static final double SHARE_OF_LARGE = 0.7;

    private final FigureContext context;
    private final WaveGroup group;
    private final ScaleGroups scales;

    CycleFigures(FigureContext context, WaveGroup group) {
        this.context = context;
        this.group = group;
        this.scales = ScaleGroups.of(sizes(group), context.palette());
    }

    private static Map<String, Double> sizes(WaveGroup group) {
        Map<String, Double> sizes = new LinkedHashMap<>();
        for (WaveSetting setting : group.settings()) {
            setting.waves().forEach((state, wave) -> {
                Samples swing = wave.cycle().orElseThrow().swing();
                sizes.merge(state, Math.max(swing.maximum(), -swing.minimum()), Math::max);
            });
        }
        return sizes;
    }

    /** The cycles at the main setting. */
    Figure chosen() {
        WaveSetting setting = group.chosen();
        Panel panel = new Panel(
                "", Cycles.timeAxis(context, setting, 8), tiers(setting, axes(List.of(setting), isTiered() ? 4 : 6)));
        return new PanelFigure(
                context.title("figure.cycles-main.title", setting.gainPercent(), group.condition()),
                finding(setting) + scales.finding(context),
                PanelGrid.single(panel, isTiered() ? TIERED_SHAPE : SINGLE_SHAPE),
                legend(),
                scales.legend(context));
    }

    /** The cycles at every setting, all to one scale but those of a state that dwarfs the others. */
    Figure all() {
        List<Axis> axes = axes(group.settings(), isTiered() ? 4 : 5);
        Axis time = Cycles.timeAxis(context, group.settings().get(0), 4);
        List<Panel> panels = group.settings().stream()
                .map(s -> new Panel(context.conditions().gain(s.gainPercent()), time, tiers(s, axes)))
                .toList();
        return new PanelFigure(
                context.title("figure.cycles.title", group.condition()),
                allFinding() + scales.finding(context),
                PanelGrid.inRows(panels, true, isTiered() ? TIERED_HEIGHT : HEIGHT),
                legend(),
                scales.legend(context));
    }

    private boolean isTiered() {
        return scales.groups().size() > 1;
    }

    /** The output's axis of each group of states. */
    private List<Axis> axes(List<WaveSetting> settings, int steps) {
        return scales.groups().stream()
                .map(states -> context.output(range(settings, states), steps))
                .toList();
    }

    private List<Panel.Tier> tiers(WaveSetting setting, List<Axis> axes) {
        List<Panel.Tier> tiers = new ArrayList<>();
        for (int i = 0; i < axes.size(); i++) {
            double weight = i < axes.size() - 1 ? SHARE_OF_LARGE : 1;
            tiers.add(new Panel.Tier(
                    axes.get(i), weight, curves(setting, scales.groups().get(i))));
        }
        return tiers;
    }

    private List<LegendEntry> legend() {
        return context.palette().entries(group.states(), LegendEntry::line);
    }

    /** The cycles of a setting as they were captured. */
    List<Curve> curves(WaveSetting setting) {
        return curves(setting, List.copyOf(setting.waves().keySet()));
    }

    private List<Curve> curves(WaveSetting setting, List<String> states) {
        return states.stream()
                .filter(setting.waves()::containsKey)
                .map(state -> curve(context.palette().of(state), setting.waves().get(state)))
                .toList();
    }

    private static Curve curve(StateStyle style, WaveformResult wave) {
        CycleTrace cycle = wave.cycle().orElseThrow();
        Samples swing = Cycles.closed(cycle.swing());
        return new Curve(style, Cycles.times(cycle, Cycles.period(wave)), swing);
    }

    /** What all waves of some settings span. */
    static Extent range(List<WaveSetting> settings) {
        return Extent.ofAll(settings.stream()
                .flatMap(s -> s.waves().values().stream())
                .map(w -> w.cycle().orElseThrow().swing()));
    }

    private Extent range(List<WaveSetting> settings, List<String> states) {
        List<Samples> swings = settings.stream()
                .flatMap(s -> states.stream()
                        .flatMap(state -> Stream.ofNullable(s.waves().get(state))))
                .map(w -> w.cycle().orElseThrow().swing())
                .toList();
        return swings.isEmpty() ? range(group.settings(), states) : Extent.ofAll(swings.stream());
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
