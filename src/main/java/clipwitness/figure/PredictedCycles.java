package clipwitness.figure;

import clipwitness.compare.result.Prediction;
import clipwitness.compare.result.StatePrediction;
import clipwitness.figure.canvas.Figure;
import clipwitness.figure.canvas.Ink;
import clipwitness.figure.canvas.MarkerShape;
import clipwitness.figure.canvas.StateStyle;
import clipwitness.figure.chart.Curve;
import clipwitness.figure.chart.Extent;
import clipwitness.figure.chart.Layer;
import clipwitness.figure.chart.LegendEntry;
import clipwitness.figure.chart.Lists;
import clipwitness.figure.chart.Marker;
import clipwitness.figure.chart.Panel;
import clipwitness.figure.chart.PanelFigure;
import clipwitness.figure.chart.PanelGrid;
import clipwitness.measure.CycleTrace;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The wave that traced devices predict beside the measured one, of each state at its highest gain. Zero is the output where the input
 * crosses its mean, from which clip levels count: the mean of a wave clipped unevenly moves. Where that is not known of every wave, each is
 * drawn around its own mean, and the figure says so.
 */
final class PredictedCycles {
    private static final double HEIGHT = 88;
    private static final double SINGLE_SHAPE = 0.24;
    private static final int MOST_COLUMNS = 4;
    private static final int STEPS = 5;
    private static final int MARKS_A_CYCLE = 40;

    private final FigureContext context;
    private final List<StatePrediction> shown;
    private final boolean aroundZero;
    private final StateStyle predictedStyle;

    PredictedCycles(FigureContext context) {
        this.context = context;
        this.shown = found();
        this.predictedStyle = new StateStyle(context.say("legend.predicted"), Ink.TEXT, Ink.FINE, MarkerShape.CIRCLE);
        this.aroundZero = shown.stream()
                .allMatch(p -> zero(p, Prediction::predicted).isPresent()
                        && zero(p, Prediction::measured).isPresent());
    }

    /** The figure; none where no wave is predicted. */
    Optional<Figure> figure() {
        return shown.isEmpty() ? Optional.empty() : Optional.of(panels());
    }

    private Figure panels() {
        List<Panel> panels = shown.stream().map(this::panel).toList();
        Set<String> states = new LinkedHashSet<>();
        shown.forEach(p -> states.add(p.state()));
        return new PanelFigure(
                context.say("figure.devices-predicted.title"),
                finding(),
                panels.size() == 1
                        ? PanelGrid.single(panels.get(0), SINGLE_SHAPE)
                        : PanelGrid.inRows(panels, false, HEIGHT, MOST_COLUMNS),
                context.palette().entries(states, LegendEntry::line),
                List.of(LegendEntry.marker(predictedStyle.label(), true)));
    }

    private Panel panel(StatePrediction p) {
        WaveformResult wave = measured(p).orElseThrow();
        CycleTrace own = wave.cycle().orElseThrow();
        CycleTrace trace = p.cycle().orElseThrow();
        StateStyle style = context.palette().of(p.state());
        double period = Cycles.period(wave);
        double scale = p.toScale() ? 1 : own.swing().maximum() / trace.swing().maximum();
        Curve measured = curve(style, own, period, 1, zero(p, Prediction::measured));
        Curve predicted = curve(predictedStyle, trace, period, scale, zero(p, Prediction::predicted));
        return Panel.of(
                style.label(),
                context.axes().exact(context.say("axis.time"), Unit.SECOND, new Extent(0, period), 4),
                context.output(Extent.ofAll(Stream.of(measured.y(), predicted.y())), STEPS),
                Lists.<Layer>joined(List.of(measured), marks(predicted)));
    }

    private Curve curve(StateStyle style, CycleTrace cycle, double period, double scale, OptionalDouble zero) {
        double shift = aroundZero ? zero.orElseThrow() : 0;
        return new Curve(
                style, Cycles.times(cycle, period), Cycles.closed(cycle.swing()).map(v -> scale * v - shift));
    }

    /** The output where the input crosses its mean, V above the output's mean: the peak counts from this, the clip level from that. */
    private static OptionalDouble zero(StatePrediction prediction, Function<Prediction, Measured> side) {
        OptionalDouble peak = value(prediction, WaveformQuantity.PEAK_UP, side);
        OptionalDouble clip = value(prediction, WaveformQuantity.CLIP_UP, side);
        return peak.isPresent() && clip.isPresent()
                ? OptionalDouble.of(peak.getAsDouble() - clip.getAsDouble())
                : OptionalDouble.empty();
    }

    private static OptionalDouble value(
            StatePrediction prediction, WaveformQuantity quantity, Function<Prediction, Measured> side) {
        return prediction.figure(quantity.key()).map(side).map(Measured::value).orElse(OptionalDouble.empty());
    }

    /** A curve as marks at even distances, to be seen on a line that lies in the same place. */
    private static List<Marker> marks(Curve curve) {
        int last = curve.x().size() - 1;
        return IntStream.rangeClosed(0, MARKS_A_CYCLE)
                .map(i -> (int) Math.round((double) i * last / MARKS_A_CYCLE))
                .mapToObj(i ->
                        new Marker(curve.style(), curve.x().at(i), curve.y().at(i), true))
                .toList();
    }

    /** Of each state the prediction at its highest gain. */
    private List<StatePrediction> found() {
        Map<String, StatePrediction> highest = new LinkedHashMap<>();
        context.results().devices().highest().stream()
                .filter(p -> p.cycle().isPresent()
                        && measured(p).flatMap(WaveformResult::cycle).isPresent())
                .forEach(p -> highest.put(p.state(), p));
        return context.palette().inOrder(highest.keySet()).stream()
                .map(highest::get)
                .toList();
    }

    private Optional<WaveformResult> measured(StatePrediction prediction) {
        return context.results()
                .waves(prediction.state(), prediction.condition())
                .flatMap(c -> c.waveform().stream())
                .filter(w -> !w.refused())
                .findFirst();
    }

    private String finding() {
        List<String> parts = new ArrayList<>();
        for (StatePrediction p : shown) {
            long agreeing =
                    p.figures().stream().filter(f -> f.agrees().orElse(false)).count();
            long known =
                    p.figures().stream().filter(f -> f.agrees().isPresent()).count();
            parts.add(context.say(
                    "figure.devices-predicted.state",
                    "state",
                    context.called(p.state()),
                    "count",
                    Long.toString(agreeing),
                    "all",
                    Long.toString(known)));
        }
        return context.say("figure.devices-predicted.says", "list", Sentences.parts(parts)) + " " + context.say(zero());
    }

    private String zero() {
        if (aroundZero) {
            return "figure.devices-predicted.zero";
        }
        return shown.stream().allMatch(StatePrediction::toScale)
                ? "figure.devices-predicted.mean"
                : "figure.devices-predicted.mean.scaled";
    }
}
