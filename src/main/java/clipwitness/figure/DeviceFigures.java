package clipwitness.figure;

import clipwitness.capture.Samples;
import clipwitness.compare.CaptureResult;
import clipwitness.compare.Devices;
import clipwitness.compare.PairCurve;
import clipwitness.compare.StatePrediction;
import clipwitness.compare.TracedDevice;
import clipwitness.measure.CycleTrace;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.junction.NamedDevice;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Traced devices, the pairs that they make, and the waves that they predict beside the measured ones. */
final class DeviceFigures {
    private static final double SHAPE = 0.62;
    private static final double PAIR_SHAPE = 0.42;
    private static final int MOST_COLUMNS = 3;
    private static final int STEPS = 5;
    private static final int MARKS_A_CYCLE = 40;
    private static final StateStyle PREDICTED =
            new StateStyle("predicted from the traced devices", Ink.TEXT, Ink.FINE, MarkerShape.CIRCLE);

    private final FigureContext context;
    private final Devices devices;

    DeviceFigures(FigureContext context) {
        this.context = context;
        this.devices = context.results().devices();
    }

    /** The figures by name; none where no device was traced. */
    Map<String, Figure> all() {
        Map<String, Figure> figures = new LinkedHashMap<>();
        List<NamedDevice> traced = devices.traced().stream()
                .map(d -> new NamedDevice(name(d), d.result()))
                .filter(TraceFigure::conducts)
                .toList();
        if (!traced.isEmpty()) {
            figures.put("devices", TraceFigure.of(traced, context.numbers()));
        }
        if (!devices.combined().isEmpty()) {
            figures.put("devices-pairs", combined());
        }
        List<Panel> cycles = cycles();
        if (!cycles.isEmpty()) {
            figures.put("devices-predicted", predicted(cycles));
        }
        return figures;
    }

    private static String name(TracedDevice device) {
        return device.name() + device.row().state().map(s -> " (" + s + ")").orElse("");
    }

    private Figure combined() {
        List<Curve> curves = new ArrayList<>();
        devices.combined().forEach((state, c) -> curves.add(curve(state, c)));
        Axis x = context.axes().round("Voltage", Unit.VOLT, range(curves, true), 8);
        Axis y = context.axes().round("Current", Unit.AMPERE, range(curves, false), STEPS);
        return new PanelFigure(
                "Current through the clipping pair of each state",
                "The legs of each pair side by side, from the traced curves: where a curve turns up or down, that half of the"
                        + " wave is clipped.",
                PanelGrid.single(Panel.of("", x, y, curves), PAIR_SHAPE),
                context.palette().entries(devices.combined().keySet(), LegendEntry::line),
                List.of());
    }

    private Curve curve(String state, PairCurve curve) {
        return new Curve(context.palette().of(state), curve.volts(), curve.amperes());
    }

    private static Range range(List<Curve> curves, boolean ofX) {
        return Range.over(curves.stream()
                .map(c -> ofX ? c.x() : c.y())
                .map(s -> new Range(s.minimum(), s.maximum()))
                .toList());
    }

    private Figure predicted(List<Panel> panels) {
        LinkedHashSet<String> states = new LinkedHashSet<>();
        shown().forEach(p -> states.add(p.state()));
        int columns = Math.min(MOST_COLUMNS, panels.size());
        return new PanelFigure(
                "Predicted and measured cycle of each state at its highest gain",
                finding(),
                new PanelGrid(panels, columns, false, columns == 1 ? PAIR_SHAPE : SHAPE),
                context.palette().entries(states, LegendEntry::line),
                List.of(LegendEntry.marker(PREDICTED.label(), true)));
    }

    private List<Panel> cycles() {
        List<Panel> panels = new ArrayList<>();
        for (StatePrediction p : shown()) {
            WaveformResult wave = measured(p).orElseThrow();
            Samples own = wave.cycle().orElseThrow().swing();
            Samples swing = Cycles.closed(own);
            CycleTrace trace = p.cycle().orElseThrow();
            double scale = p.toScale() ? 1 : own.maximum() / trace.swing().maximum();
            double period = Cycles.period(wave);
            Samples prediction = Cycles.closed(trace.swing().map(v -> scale * v));
            Curve measured = new Curve(
                    context.palette().of(p.state()), Cycles.times(wave.cycle().get(), period), swing);
            Curve predicted = new Curve(PREDICTED, Cycles.times(trace, period), prediction);
            panels.add(Panel.of(
                    context.palette().of(p.state()).label(),
                    context.axes().exact("Time", Unit.SECOND, new Range(0, period), 4),
                    context.axes().round("Output", Unit.VOLT, range(List.of(measured, predicted), false), STEPS),
                    Lists.<Layer>joined(List.of(measured), marks(predicted))));
        }
        return panels;
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
    private List<StatePrediction> shown() {
        Map<String, StatePrediction> highest = new LinkedHashMap<>();
        devices.predictions().stream()
                .filter(p -> p.cycle().isPresent()
                        && measured(p).flatMap(WaveformResult::cycle).isPresent())
                .sorted(Comparator.comparingDouble(
                        p -> p.condition().gainPercent().orElse(0)))
                .forEach(p -> highest.put(p.state(), p));
        return context.palette().inOrder(highest.keySet()).stream()
                .map(highest::get)
                .toList();
    }

    private Optional<WaveformResult> measured(StatePrediction prediction) {
        return context.results().captures().stream()
                .filter(c -> c.row().state().equals(Optional.of(prediction.state()))
                        && c.row().condition().equals(prediction.condition()))
                .flatMap(c -> waves(c).stream())
                .findFirst();
    }

    private static Optional<WaveformResult> waves(CaptureResult capture) {
        return capture.waveform().filter(w -> !w.refused());
    }

    private String finding() {
        List<String> parts = new ArrayList<>();
        for (StatePrediction p : shown()) {
            long agreeing =
                    p.figures().stream().filter(f -> f.agrees().orElse(false)).count();
            long known =
                    p.figures().stream().filter(f -> f.agrees().isPresent()).count();
            parts.add(context.quoted(p.state()) + " " + agreeing + " of " + known + " figures");
        }
        return Sentences.of("Within the uncertainty of the prediction lie: ", parts);
    }
}
