package clipwitness.figure;

import clipwitness.capture.Samples;
import clipwitness.figure.canvas.Figure;
import clipwitness.figure.canvas.Ink;
import clipwitness.figure.canvas.MarkerShape;
import clipwitness.figure.canvas.StateStyle;
import clipwitness.figure.chart.Axes;
import clipwitness.figure.chart.Axis;
import clipwitness.figure.chart.Curve;
import clipwitness.figure.chart.Extent;
import clipwitness.figure.chart.LegendEntry;
import clipwitness.figure.chart.Lists;
import clipwitness.figure.chart.Panel;
import clipwitness.figure.chart.PanelFigure;
import clipwitness.figure.chart.PanelGrid;
import clipwitness.measure.Measured;
import clipwitness.measure.junction.JunctionFit;
import clipwitness.measure.junction.JunctionResult;
import clipwitness.measure.match.NamedDevice;
import clipwitness.quantity.NumberText;
import clipwitness.quantity.Unit;
import clipwitness.words.Speech;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Traced devices together: current over voltage, linear and logarithmic with the fitted models, and what the models leave. */
public final class TraceFigure {
    private static final double SHAPE = 0.68;
    private static final double LOWEST_SHARE = 1e-5;
    private static final int STEPS = 5;
    private static final int MODEL_POINTS = 60;
    private static final int DIGITS = 3;

    private final List<NamedDevice> devices;
    private final Axes axes;
    private final Speech speech;
    private final DeviceStyles styles;
    private final StateStyle modelStyle;

    private TraceFigure(List<NamedDevice> devices, Speech speech) {
        this.devices = devices;
        this.speech = speech;
        this.axes = new Axes(speech.numbers());
        this.modelStyle = new StateStyle(speech.say("legend.model"), Color.BLACK, Ink.stroke(0.6f), MarkerShape.CIRCLE);
        this.styles = new DeviceStyles(devices.stream().map(NamedDevice::name).toList());
    }

    /**
     * The figure.
     *
     * @param devices devices with a curve above the floor, one or more
     * @param speech  words and numbers of the page
     */
    public static Figure of(List<NamedDevice> devices, Speech speech) {
        List<NamedDevice> traced =
                devices.stream().filter(TraceFigure::conducts).toList();
        if (traced.isEmpty()) {
            throw new IllegalArgumentException("no device conducts");
        }
        return new TraceFigure(traced, speech).figure();
    }

    /** Whether a device has a curve to be drawn. */
    public static boolean conducts(NamedDevice device) {
        return device.result().curve().isPresent();
    }

    private Figure figure() {
        Axis volts = axes.round(speech.say("axis.voltage"), Unit.VOLT, range(JunctionResult::volts), STEPS);
        Axis linear = axes.round(
                speech.say("axis.current"),
                Unit.AMPERE,
                range(JunctionResult::amperes).with(0),
                STEPS);
        double top = range(JunctionResult::amperes).high();
        double bottom = framing().stream()
                .mapToDouble(d -> d.result().curve().orElseThrow().lowest())
                .min()
                .orElseThrow();
        Axis log = axes.logarithmic(
                speech.say("axis.current"), Unit.AMPERE, new Extent(Math.max(bottom / 2, LOWEST_SHARE * top), top));
        List<Panel> panels = new ArrayList<>();
        panels.add(Panel.of(speech.say("figure.devices.linear"), volts, linear, measured(false)));
        panels.add(
                Panel.of(speech.say("figure.devices.logarithmic"), volts, log, Lists.joined(measured(true), models())));
        List<Curve> residuals = residuals();
        if (!residuals.isEmpty()) {
            Extent span = Extent.ofAll(residuals.stream().map(Curve::y));
            panels.add(Panel.of(
                    speech.say("figure.devices.residual"),
                    volts,
                    axes.round(speech.say("axis.difference"), Unit.VOLT, span.with(0), STEPS),
                    residuals));
        }
        return new PanelFigure(
                speech.say("figure.devices.title"),
                finding(),
                new PanelGrid(panels, panels.size(), false, SHAPE),
                styles.legend(),
                residuals.isEmpty() ? List.of() : List.of(LegendEntry.line(modelStyle)));
    }

    private Extent range(Function<JunctionResult, Samples> column) {
        Extent all = Extent.ofAll(framing().stream().map(d -> column.apply(d.result())));
        return new Extent(Math.max(all.low(), 0), all.high());
    }

    /** The devices that the axes suit: the junctions, where there is one; a resistor may leave the frame. */
    private List<NamedDevice> framing() {
        List<NamedDevice> junctions =
                devices.stream().filter(d -> d.result().fit().isPresent()).toList();
        return junctions.isEmpty() ? devices : junctions;
    }

    private List<Curve> measured(boolean positive) {
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < devices.size(); i++) {
            JunctionResult r = devices.get(i).result();
            StateStyle style = positive ? styles.of(i).broad() : styles.of(i);
            curves.add(sorted(style, r.volts(), r.amperes(), positive));
        }
        return curves;
    }

    /** Points in the order of their voltage; on a logarithmic axis those of no or reverse current are gaps. */
    private static Curve sorted(StateStyle style, Samples x, Samples y, boolean positive) {
        int[] order = IntStream.range(0, x.size())
                .boxed()
                .filter(i -> !positive || y.at(i) > 0)
                .sorted(Comparator.comparingDouble(x::at))
                .mapToInt(Integer::intValue)
                .toArray();
        return new Curve(
                style,
                Samples.of(Arrays.stream(order).mapToDouble(x::at).toArray()),
                Samples.of(Arrays.stream(order).mapToDouble(y::at).toArray()));
    }

    private List<Curve> models() {
        List<Curve> curves = new ArrayList<>();
        for (NamedDevice d : devices) {
            d.result().fit().ifPresent(fit -> curves.add(model(fit)));
        }
        return curves;
    }

    private Curve model(JunctionFit fit) {
        double low =
                Math.max(fit.currents().minimum(), LOWEST_SHARE * fit.currents().maximum());
        double high = fit.currents().maximum();
        double[] amperes = IntStream.range(0, MODEL_POINTS)
                .mapToDouble(i -> low * Math.pow(high / low, i / (MODEL_POINTS - 1.0)))
                .toArray();
        double[] volts = Arrays.stream(amperes).map(fit.model()::voltageAt).toArray();
        return new Curve(modelStyle, Samples.of(volts), Samples.of(amperes));
    }

    private List<Curve> residuals() {
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < devices.size(); i++) {
            StateStyle style = styles.of(i);
            devices.get(i)
                    .result()
                    .fit()
                    .ifPresent(f ->
                            curves.add(sorted(style, f.currents().map(f.model()::voltageAt), f.residuals(), false)));
        }
        return curves;
    }

    private String finding() {
        List<String> parts = new ArrayList<>();
        for (NamedDevice d : devices.subList(0, Math.min(devices.size(), 8))) {
            parts.add(speech.say(
                    "figure.devices.device",
                    "device",
                    d.name(),
                    "voltage",
                    d.result()
                            .atOneMilliampere()
                            .asValue()
                            .map((Measured.Value v) -> speech.numbers()
                                    .rounded(
                                            v.number(), Unit.VOLT, NumberText.digits(v.number(), v.expanded(), DIGITS)))
                            .orElse("")));
        }
        String voltages = speech.say("figure.devices.says", "list", Sentences.parts(parts));
        return framing().size() < devices.size() ? voltages + " " + speech.say("figure.devices.frame") : voltages;
    }
}
