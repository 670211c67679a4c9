package clipwitness.figure;

import clipwitness.capture.Condition;
import clipwitness.capture.Samples;
import clipwitness.compare.result.StateNoise;
import clipwitness.figure.canvas.Figure;
import clipwitness.figure.chart.Axis;
import clipwitness.figure.chart.Curve;
import clipwitness.figure.chart.Extent;
import clipwitness.figure.chart.Layer;
import clipwitness.figure.chart.LegendEntry;
import clipwitness.figure.chart.NamedPlaces;
import clipwitness.figure.chart.Panel;
import clipwitness.figure.chart.PanelFigure;
import clipwitness.figure.chart.PanelGrid;
import clipwitness.figure.chart.Scale;
import clipwitness.measure.Measured;
import clipwitness.measure.noise.Band;
import clipwitness.measure.noise.HumLine;
import clipwitness.measure.noise.NoiseFigure;
import clipwitness.measure.noise.NoiseSpectrum;
import clipwitness.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/** Noise of all states over frequency, the lines of the mains named; a panel for each condition. */
final class NoiseFigures {
    private static final double SINGLE_SHAPE = 0.31;
    private static final double HEIGHT = 110;
    private static final int MOST_COLUMNS = 3;
    private static final double STEPS_AN_OCTAVE = 48;
    private static final double MOST_DECADES = 4;
    private static final double ROOM_FOR_NAMES = 2;
    private static final List<Double> MARKS =
            List.of(20.0, 50.0, 100.0, 200.0, 500.0, 1000.0, 2000.0, 5000.0, 10_000.0, 20_000.0);

    private final FigureContext context;
    private final List<StateNoise> noises;

    NoiseFigures(FigureContext context) {
        this.context = context;
        this.noises = context.results().noise().stream()
                .filter(n -> n.spectrum().isPresent() && n.band().isPresent())
                .toList();
    }

    /** Whether there is a spectrum to show. */
    boolean hasSpectra() {
        return !noises.isEmpty();
    }

    /** The spectra. */
    Figure all() {
        List<Condition> conditions =
                noises.stream().map(StateNoise::condition).distinct().toList();
        boolean single = conditions.size() == 1;
        Axis x = frequencies();
        List<Curve> all = noises.stream().map(this::curve).toList();
        Axis y = context.axes().logarithmic(context.say("axis.noise"), context.voltage(), shown(all));
        List<Panel> panels = conditions.stream()
                .map(c -> Panel.of(single ? "" : context.conditions().gain(c.gainPercent()), x, y, layers(c)))
                .toList();
        Set<String> states = new LinkedHashSet<>();
        noises.forEach(n -> states.add(n.state()));
        return new PanelFigure(
                context.title(
                        "figure.noise.title",
                        single ? conditions.get(0).gainPercent() : OptionalDouble.empty(),
                        conditions.get(0)),
                finding(),
                single
                        ? PanelGrid.single(panels.get(0), SINGLE_SHAPE)
                        : PanelGrid.inRows(panels, true, HEIGHT, MOST_COLUMNS),
                context.palette().entries(states, LegendEntry::line),
                List.of());
    }

    /** The band of all states, marks with their units. */
    private Axis frequencies() {
        Extent band = band();
        List<Axis.Tick> marks = MARKS.stream()
                .filter(f -> f >= band.low() && f <= band.high())
                .map(this::named)
                .toList();
        return new Axis(context.say("axis.frequency"), new Scale.Logarithmic(band.low(), band.high()), marks);
    }

    private Extent band() {
        return Extent.over(noises.stream()
                .map(n -> n.band().orElseThrow())
                .map(b -> new Extent(b.low(), b.high()))
                .toList());
    }

    /** All that the curves reach, four decades at most, with room for names above. */
    private static Extent shown(List<Curve> curves) {
        Extent all = Extent.ofAll(curves.stream().map(Curve::y));
        return new Extent(Math.max(all.low(), all.high() / Math.pow(10, MOST_DECADES)), ROOM_FOR_NAMES * all.high());
    }

    private List<Layer> layers(Condition condition) {
        List<Layer> layers = new ArrayList<>();
        Map<Double, Axis.Tick> lines = new TreeMap<>();
        for (StateNoise n : noises) {
            if (n.condition().equals(condition)) {
                n.hum().stream().filter(HumLine::stands).forEach(l -> lines.put(l.frequency(), named(l.frequency())));
            }
        }
        layers.add(new NamedPlaces(List.copyOf(lines.values())));
        noises.stream().filter(n -> n.condition().equals(condition)).forEach(n -> layers.add(curve(n)));
        return layers;
    }

    private Axis.Tick named(double frequency) {
        return new Axis.Tick(frequency, context.numbers().nominal(frequency, Unit.HERTZ));
    }

    /** Density in a band of 1 Hz, V, averaged over a forty-eighth of an octave where the bins lie closer. */
    private Curve curve(StateNoise noise) {
        NoiseSpectrum spectrum = noise.spectrum().orElseThrow();
        Band band = noise.band().orElseThrow();
        List<Double> frequencies = new ArrayList<>();
        List<Double> densities = new ArrayList<>();
        int next = (int) Math.ceil(band.low() / spectrum.spacing());
        while (next < spectrum.points() && next * spectrum.spacing() <= band.high()) {
            int end = Math.max(next + 1, (int) (next * Math.pow(2, 1 / STEPS_AN_OCTAVE)));
            double power = 0;
            for (int i = next; i < Math.min(end, spectrum.points()); i++) {
                power += spectrum.density(i) * spectrum.density(i) / (Math.min(end, spectrum.points()) - next);
            }
            frequencies.add((next + end - 1) / 2.0 * spectrum.spacing());
            densities.add(power > 0 ? Math.sqrt(power) : Double.NaN);
            next = end;
        }
        return new Curve(context.palette().of(noise.state()), samples(frequencies), samples(densities));
    }

    private static Samples samples(List<Double> values) {
        return Samples.of(values.stream().mapToDouble(v -> v).toArray());
    }

    private String finding() {
        List<String> parts = new ArrayList<>();
        for (StateNoise n : noises) {
            parts.add(context.say(
                    "figure.noise.state",
                    "state",
                    context.called(n.state()),
                    "rms",
                    value(n, NoiseFigure.RMS),
                    "weighted",
                    value(n, NoiseFigure.A_WEIGHTED),
                    "line",
                    strongest(n),
                    "condition",
                    context.conditions().gain(n.condition().gainPercent())));
        }
        return context.say("figure.noise.says", "list", Sentences.parts(parts));
    }

    private String value(StateNoise noise, NoiseFigure figure) {
        return noise.values()
                .get(figure)
                .asValue()
                .map((Measured.Value v) -> context.values().of(v))
                .orElse("");
    }

    private String strongest(StateNoise noise) {
        return noise.hum().stream()
                .filter(HumLine::stands)
                .max(Comparator.comparingDouble(l -> l.level().value().orElse(0)))
                .map(l -> context.say(
                        "figure.noise.line",
                        "frequency",
                        context.numbers().nominal(l.frequency(), Unit.HERTZ),
                        "level",
                        l.level()
                                .asValue()
                                .map((Measured.Value v) -> context.values().of(v))
                                .orElse("")))
                .orElse("");
    }
}
