package clipwitness.figure;

import clipwitness.compare.result.Devices;
import clipwitness.compare.result.PairCurve;
import clipwitness.compare.result.TracedDevice;
import clipwitness.figure.canvas.Figure;
import clipwitness.figure.chart.Axis;
import clipwitness.figure.chart.Curve;
import clipwitness.figure.chart.Extent;
import clipwitness.figure.chart.LegendEntry;
import clipwitness.figure.chart.Panel;
import clipwitness.figure.chart.PanelFigure;
import clipwitness.figure.chart.PanelGrid;
import clipwitness.measure.match.NamedDevice;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Traced devices, the pairs that they make, and the waves that they predict. */
final class DeviceFigures {
    private static final double PAIR_SHAPE = 0.42;
    private static final int STEPS = 5;

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
            figures.put("devices", TraceFigure.of(traced, context.speech()));
        }
        if (!devices.combined().isEmpty()) {
            figures.put("devices-pairs", combined());
        }
        new PredictedCycles(context).figure().ifPresent(f -> figures.put("devices-predicted", f));
        return figures;
    }

    private static String name(TracedDevice device) {
        return device.name() + device.row().state().map(s -> " (" + s + ")").orElse("");
    }

    private Figure combined() {
        List<Curve> curves = new ArrayList<>();
        devices.combined().forEach((state, c) -> curves.add(curve(state, c)));
        Axis x = context.axes()
                .round(
                        context.say("axis.voltage"),
                        Unit.VOLT,
                        Extent.ofAll(curves.stream().map(Curve::x)),
                        8);
        Axis y = context.axes()
                .round(
                        context.say("axis.current"),
                        Unit.AMPERE,
                        Extent.ofAll(curves.stream().map(Curve::y)),
                        STEPS);
        return new PanelFigure(
                context.say("figure.devices-pairs.title"),
                context.say("figure.devices-pairs.says"),
                PanelGrid.single(Panel.of("", x, y, curves), PAIR_SHAPE),
                context.palette().entries(devices.combined().keySet(), LegendEntry::line),
                List.of());
    }

    private Curve curve(String state, PairCurve curve) {
        return new Curve(context.palette().of(state), curve.volts(), curve.amperes());
    }
}
