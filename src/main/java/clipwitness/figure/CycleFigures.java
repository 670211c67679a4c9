package clipwitness.figure;

import clipwitness.capture.Condition;
import clipwitness.capture.Samples;
import clipwitness.measure.CycleTrace;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** Mean cycles of all states over one another, at one setting of the gain control or at all. */
final class CycleFigures {
    private static final double SINGLE_SHAPE = 0.46;
    private static final double PANEL_SHAPE = 0.62;
    private static final int MOST_COLUMNS = 3;

    private final WaveGroup group;
    private final StatePalette palette;
    private final Changes changes;
    private final String titleEnd;

    CycleFigures(FigureContext context, WaveGroup group) {
        this.group = group;
        this.palette = context.palette();
        this.changes = context.changes();
        this.titleEnd = context.titleEnd(group.condition());
    }

    /** The cycles at the setting that speaks for all. */
    Figure chosen() {
        WaveSetting setting = group.chosen();
        Axis y = Axis.round("Output", Unit.VOLT, range(List.of(setting)), 6);
        Panel panel = Panel.of("", Cycles.timeAxis(setting, 8), y, curves(setting));
        String at = setting.heading().isEmpty() ? "" : " at " + setting.heading();
        return new PanelFigure(
                "Mean cycle of the output" + at + titleEnd,
                finding(setting),
                PanelGrid.single(panel, SINGLE_SHAPE),
                legend(),
                List.of());
    }

    /** The cycles at every setting, all to one scale. */
    Figure all() {
        Axis y = Axis.round("Output", Unit.VOLT, range(group.settings()), 5);
        List<Panel> panels = group.settings().stream()
                .map(s -> Panel.of(s.heading(), Cycles.timeAxis(group.settings().get(0), 4), y, curves(s)))
                .toList();
        return new PanelFigure(
                "Mean cycle of the output at each setting of the gain control" + titleEnd,
                allFinding(),
                new PanelGrid(panels, Math.min(MOST_COLUMNS, panels.size()), true, PANEL_SHAPE),
                legend(),
                List.of());
    }

    private List<LegendEntry> legend() {
        return palette.entries(group.states(), LegendEntry::line);
    }

    private List<Curve> curves(WaveSetting setting) {
        List<Curve> curves = new ArrayList<>();
        setting.waves().forEach((state, wave) -> curves.add(curve(palette.of(state), wave)));
        return curves;
    }

    private static Curve curve(StateStyle style, WaveformResult wave) {
        CycleTrace cycle = wave.cycle().orElseThrow();
        Samples swing = Cycles.closed(cycle.swing());
        return new Curve(style, Cycles.times(cycle, Cycles.period(wave)), swing);
    }

    private static Range range(List<WaveSetting> settings) {
        return Range.over(settings.stream()
                .flatMap(s -> s.waves().values().stream())
                .map(w -> w.cycle().orElseThrow().swing())
                .map(s -> new Range(s.minimum(), s.maximum()))
                .toList());
    }

    private String finding(WaveSetting setting) {
        Condition condition = group.conditionOf(setting);
        List<String> parts = changes.levelAndDistortion(condition);
        if (parts.isEmpty()) {
            parts = levels(setting);
        }
        return ValueWords.sentence(setting.opening() + ": ", parts);
    }

    private List<String> levels(WaveSetting setting) {
        List<String> parts = new ArrayList<>();
        for (String state : setting.waves().keySet()) {
            String label = ValueWords.quoted(palette.of(state).label());
            String level = setting.value(state, WaveformQuantity.RMS)
                    .map(v -> ValueWords.of(v) + " rms")
                    .orElse("no level");
            String thd = setting.value(state, WaveformQuantity.THD)
                    .map(v -> ValueWords.of(v) + " distortion")
                    .orElse("no figure of distortion");
            parts.add(label + " " + level + ", " + thd);
        }
        return parts;
    }

    private String allFinding() {
        WaveSetting first = group.settings().get(0);
        WaveSetting last = group.settings().get(group.settings().size() - 1);
        String from = ValueWords.sentence(first.opening() + ": ", levels(first));
        return first.equals(last) ? from : from + " " + ValueWords.sentence(last.opening() + ": ", levels(last));
    }
}
