package clipwitness.compare;

import clipwitness.capture.Condition;
import clipwitness.capture.Doubt;
import clipwitness.capture.Samples;
import clipwitness.capture.VerticalRange;
import clipwitness.compare.judge.StateAtCondition;
import clipwitness.compare.result.CaptureResult;
import clipwitness.compare.result.ExportFacts;
import clipwitness.job.CaptureKind;
import clipwitness.job.CaptureRow;
import clipwitness.measure.HarmonicSpectrum;
import clipwitness.measure.Measured;
import clipwitness.measure.TransferCurve;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Captures made up for tests: figures stated outright, with one standard uncertainty each. */
public final class Bench {
    private final Map<WaveformQuantity, Measured> values = new EnumMap<>(WaveformQuantity.class);
    private final String state;
    private OptionalDouble gain = OptionalDouble.empty();
    private double level = 0.1;
    private int run = 1;
    private double[] harmonics = {1};
    private VerticalRange range = VerticalRange.UNKNOWN;
    private Optional<TransferCurve> transfer = Optional.empty();
    private OptionalDouble temperature = OptionalDouble.empty();
    private Optional<String> instrument = Optional.empty();
    private List<Doubt> doubts = List.of();
    private Optional<String> sha256 = Optional.empty();
    private Optional<String> coupling = Optional.empty();
    private Optional<String> device = Optional.empty();

    private Bench(String state) {
        this.state = state;
    }

    public static Bench capture(String state) {
        return new Bench(state);
    }

    public Bench gain(double percent) {
        gain = OptionalDouble.of(percent);
        return this;
    }

    public Bench level(double volts) {
        level = volts;
        return this;
    }

    public Bench run(int number) {
        run = number;
        return this;
    }

    public Bench with(WaveformQuantity quantity, double value, double uncertainty) {
        values.put(quantity, Measured.withNoise(value, quantity.unit(), uncertainty));
        return this;
    }

    public Bench with(WaveformQuantity quantity, Measured value) {
        values.put(quantity, value);
        return this;
    }

    public Bench refused(WaveformQuantity quantity, String reason) {
        values.put(quantity, Measured.refused(quantity.unit(), reason));
        return this;
    }

    /** Cosine amplitudes of the harmonics, fundamental first. */
    public Bench harmonics(double... cosines) {
        harmonics = cosines;
        return this;
    }

    public Bench range(VerticalRange found) {
        range = found;
        return this;
    }

    public Bench transfer(TransferCurve curve) {
        transfer = Optional.of(curve);
        return this;
    }

    public Bench temperature(double celsius) {
        temperature = OptionalDouble.of(celsius);
        return this;
    }

    public Bench instrument(String name) {
        instrument = Optional.of(name);
        return this;
    }

    public Bench doubting(Doubt doubt) {
        doubts = List.of(doubt);
        return this;
    }

    public Bench device(String name) {
        device = Optional.of(name);
        return this;
    }

    /** Digest of the export; without it each state, setting and run has an export of its own. */
    Bench sha256(String digest) {
        sha256 = Optional.of(digest);
        return this;
    }

    public Bench coupling(String code) {
        coupling = Optional.of(code);
        return this;
    }

    public StateAtCondition setting() {
        CaptureResult capture = done();
        return new StateAtCondition(state, "State " + state, capture.row().condition(), List.of(capture));
    }

    /** Level, distortion, asymmetry and crest factor of an ordinary wave. */
    public static Bench ordinary(String state, double gainPercent) {
        return capture(state)
                .gain(gainPercent)
                .with(WaveformQuantity.RMS, 0.7, 0.001)
                .with(WaveformQuantity.THD, 10, 0.01)
                .with(WaveformQuantity.ASYMMETRY, 1, 0.05)
                .with(WaveformQuantity.CREST_FACTOR, 1.2, 0.001)
                .harmonics(1, 0, 0.1);
    }

    public Condition condition() {
        return new Condition(gain, OptionalDouble.of(1000), OptionalDouble.of(level), Optional.empty());
    }

    public CaptureResult done() {
        Samples zeros = Samples.of(new double[harmonics.length]);
        Samples noise = zeros.map(v -> 1e-4);
        WaveformResult waveform = new WaveformResult(
                values,
                List.of(),
                harmonics.length,
                Optional.of(new HarmonicSpectrum(1000, Samples.of(harmonics), zeros, noise)),
                Optional.empty(),
                Optional.empty(),
                transfer,
                range,
                doubts);
        return new CaptureResult(
                row(),
                new ExportFacts(
                        sha256.orElse(state + gain + level + run),
                        Optional.empty(),
                        "CH2",
                        Optional.of("CH1"),
                        5000,
                        OptionalDouble.of(1e6),
                        List.of("CH1", "CH2"),
                        List.of()),
                doubts,
                Optional.of(waveform),
                Optional.empty());
    }

    private CaptureRow row() {
        return new CaptureRow(
                2,
                "captures/" + state + ".csv",
                Optional.of(state),
                CaptureKind.WAVEFORM,
                condition(),
                run,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                1,
                1,
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                device,
                temperature,
                Optional.empty(),
                instrument,
                coupling,
                Optional.empty(),
                "");
    }
}
