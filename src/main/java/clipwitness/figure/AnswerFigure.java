package clipwitness.figure;

import clipwitness.capture.Condition;
import clipwitness.compare.rule.WaveGroup;
import clipwitness.compare.rule.WaveSetting;
import clipwitness.figure.canvas.Figure;
import clipwitness.figure.chart.Axis;
import clipwitness.figure.chart.Curve;
import clipwitness.figure.chart.Extent;
import clipwitness.figure.chart.LegendEntry;
import clipwitness.figure.chart.Panel;
import clipwitness.figure.chart.PanelFigure;
import clipwitness.figure.chart.PanelGrid;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The picture of the first page: one cycle of the output at the setting of which the page speaks, as captured, set equally loud, and what is then left
 * between the compared states, side by side. What is left has the scale of the cycles beside it, so that it looks as large as it is; where it is less
 * than a tenth or a hundredth of them it is drawn ten or a hundred times larger, and its heading says so.
 */
final class AnswerFigure {
    private static final double SHAPE = 0.62;
    private static final double SINGLE_SHAPE = 0.3;
    private static final List<Double> LARGER = List.of(100.0, 10.0);
    private static final int STEPS = 4;

    private final FigureContext context;
    private final WaveGroup group;
    private final WaveSetting setting;
    private final CycleFigures cycles;
    private final MatchedFigures matched;

    AnswerFigure(FigureContext context, WaveGroup group, WaveSetting setting) {
        this.context = context;
        this.group = group;
        this.setting = setting;
        this.cycles = new CycleFigures(context, group);
        this.matched = new MatchedFigures(context, group);
    }

    Figure figure() {
        List<Panel> panels = new ArrayList<>(List.of(captured()));
        WaveSetting levelled = matched.levelled(setting);
        List<Curve> left = matched.differences(levelled);
        if (!left.isEmpty()) {
            List<Curve> waves = matched.matched(levelled);
            Extent range = extent(waves);
            panels.add(Panel.of(context.say("figure.answer.matched"), time(), axis(range), waves));
            panels.add(left(range, left));
        }
        return new PanelFigure(
                context.title("figure.answer.title", setting.gainPercent(), group.condition()),
                finding(),
                new PanelGrid(panels, panels.size(), false, panels.size() == 1 ? SINGLE_SHAPE : SHAPE),
                context.palette().entries(setting.waves().keySet(), LegendEntry::line),
                List.of());
    }

    private Panel left(Extent waves, List<Curve> left) {
        Extent shown = extent(left);
        double times = LARGER.stream()
                .filter(t -> waves.low() <= t * shown.low() && t * shown.high() <= waves.high())
                .findFirst()
                .orElse(1.0);
        String heading = context.say(
                "figure.answer.left",
                "times",
                times > 1 ? context.axes().numbers().nominal(times, Unit.ONE) : "");
        return Panel.of(heading, time(), axis(new Extent(waves.low() / times, waves.high() / times)), left);
    }

    private Axis axis(Extent range) {
        return context.axes().round(context.say("axis.output.matched"), Unit.ONE, range, STEPS);
    }

    private static Extent extent(List<Curve> curves) {
        return Extent.ofAll(curves.stream().map(Curve::y));
    }

    private Panel captured() {
        Axis y = context.output(CycleFigures.range(List.of(setting)), 4);
        return Panel.of(context.say("figure.answer.captured"), time(), y, cycles.curves(setting));
    }

    private Axis time() {
        return Cycles.timeAxis(context, setting, 4);
    }

    private String finding() {
        Condition condition = group.conditionOf(setting);
        return context.comparisons()
                .remainders(List.of(condition))
                .map(left -> List.of(cycles.finding(setting), left).stream().collect(Collectors.joining(" ")))
                .orElseGet(() -> cycles.finding(setting));
    }
}
