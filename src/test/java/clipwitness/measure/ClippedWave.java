package clipwitness.measure;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.fitting.PolynomialCurveFitter;
import org.apache.commons.math3.fitting.WeightedObservedPoint;

/** Sines through clipping curves, with figures from sums over one finely divided cycle and from the curve itself. */
final class ClippedWave {
    static final ClippedWave HARD = new ClippedWave("hard", 2, TestRecord.clip(0.7, 0.7));
    static final ClippedWave TANH = new ClippedWave("tanh", 3, u -> 0.8 * Math.tanh(u));
    static final ClippedWave ASINH = new ClippedWave("asinh lopsided", 20, u -> 0.2 * asinh(u, u > 0 ? 1 : 0.6));
    static final ClippedWave ARCTANGENT = new ClippedWave("arctangent", 4, u -> 0.6 * Math.atan(u));

    private static final int PLACES = 1 << 15;
    private static final int PLACES_OF_CUBIC = 1 << 12;
    private static final double ONE_DECIBEL_SHORT = 0.8912509381337456;

    private final String name;
    private final double drive;
    private final DoubleUnaryOperator curve;
    private final double[] cycle;
    private final double[] cubic;

    private ClippedWave(String name, double drive, DoubleUnaryOperator curve) {
        this.name = name;
        this.drive = drive;
        this.curve = curve;
        this.cycle = IntStream.range(0, PLACES)
                .mapToDouble(i -> outputAt((i + 0.5) / PLACES))
                .toArray();
        this.cubic = cubic();
    }

    /** Waves on which constants of the measures were chosen. */
    static Stream<ClippedWave> tuned() {
        return Stream.of(
                new ClippedWave("sine", 0.8, u -> u),
                HARD,
                new ClippedWave("hard lopsided", 1.6, TestRecord.clip(0.8, 0.5)),
                TANH,
                ASINH);
    }

    /** Waves that no constant was chosen on, and none may be: they confirm what holds on the others. */
    static Stream<ClippedWave> heldOut() {
        return Stream.of(
                ARCTANGENT,
                new ClippedWave("hard below", 1.1, TestRecord.clip(2, 0.45)),
                new ClippedWave("root lopsided", 6, u -> 0.6 * root(u, u > 0 ? 0.8 : 1.3)));
    }

    private static double root(double u, double scale) {
        return u / Math.sqrt(1 + u * u / (scale * scale));
    }

    /** Voltage of an antiparallel pair of exponential junctions over the current, in units of the smaller one's scale. */
    private static double asinh(double u, double scale) {
        double v = Math.abs(u) / scale;
        return Math.copySign(scale * Math.log(v + Math.sqrt(v * v + 1)), u);
    }

    /** Every figure that is known exactly. */
    Map<WaveformQuantity, Double> figures() {
        double up = clipUp() - mean();
        double down = clipDown() + mean();
        Map<WaveformQuantity, Double> figures = new EnumMap<>(WaveformQuantity.class);
        figures.put(WaveformQuantity.RMS, rms());
        figures.put(WaveformQuantity.FUNDAMENTAL, harmonic(1));
        figures.put(WaveformQuantity.THD, thd());
        figures.put(WaveformQuantity.PEAK_UP, up);
        figures.put(WaveformQuantity.PEAK_DOWN, down);
        figures.put(WaveformQuantity.CREST_FACTOR, Math.max(up, down) / rms());
        figures.put(WaveformQuantity.ASYMMETRY, asymmetry(up, down));
        figures.put(WaveformQuantity.LEAN, 0.0);
        figures.put(WaveformQuantity.GAIN, 20 * Math.log10(harmonic(1) / drive));
        figures.put(WaveformQuantity.SMALL_SIGNAL_GAIN, 20 * Math.log10(cubic[1]));
        onset(cubic, 1).ifPresent(onset -> figures.put(WaveformQuantity.ONSET_UP, onset));
        onset(cubic, -1).ifPresent(onset -> figures.put(WaveformQuantity.ONSET_DOWN, onset));
        figures.put(WaveformQuantity.CLIP_UP, clipUp());
        figures.put(WaveformQuantity.CLIP_DOWN, clipDown());
        figures.put(WaveformQuantity.CLIP_ASYMMETRY, asymmetry(clipUp(), clipDown()));
        return figures;
    }

    private static double asymmetry(double up, double down) {
        return 100 * (up - down) / (up + down);
    }

    /** Amplitude of the input. */
    double drive() {
        return drive;
    }

    double outputAt(double phase) {
        return curve.applyAsDouble(drive * TestRecord.SINE.applyAsDouble(phase));
    }

    private double average(IntToDoubleFunction value) {
        return IntStream.range(0, PLACES).mapToDouble(value).average().orElseThrow();
    }

    private double mean() {
        return Arrays.stream(cycle).average().orElseThrow();
    }

    private double rms() {
        double mean = mean();
        return Math.sqrt(average(i -> (cycle[i] - mean) * (cycle[i] - mean)));
    }

    double harmonic(int order) {
        double turn = 2 * Math.PI * order / PLACES;
        return 2
                * Math.hypot(
                        average(i -> cycle[i] * Math.cos(turn * (i + 0.5))),
                        average(i -> cycle[i] * Math.sin(turn * (i + 0.5))));
    }

    /** In percent, of 20 harmonics. */
    private double thd() {
        double power = IntStream.rangeClosed(2, 20)
                .mapToDouble(this::harmonic)
                .map(a -> a * a)
                .sum();
        return 100 * Math.sqrt(power) / harmonic(1);
    }

    /** Upper extreme; the output at the input's mean is 0. */
    private double clipUp() {
        return outputAt(0.25);
    }

    private double clipDown() {
        return -outputAt(0.75);
    }

    /** Slope and value of the cubic at the input's mean, as the method defines it: least squares over 0.75 of the smaller onset or 5 % of the input. */
    private double[] cubic() {
        double window = 0.15 * drive;
        double[] found = new double[4];
        for (int round = 0; round < 60; round++) {
            found = cubic(window);
            double smaller =
                    Math.min(onset(found, 1).orElse(drive), onset(found, -1).orElse(drive));
            window = (window + Math.max(0.05 * drive, 0.75 * smaller)) / 2;
        }
        return found;
    }

    private double[] cubic(double window) {
        double reach = Math.asin(window / drive);
        return PolynomialCurveFitter.create(3)
                .fit(IntStream.range(0, PLACES_OF_CUBIC)
                        .mapToDouble(i -> drive * Math.sin(reach * (2 * i + 1 - PLACES_OF_CUBIC) / PLACES_OF_CUBIC))
                        .mapToObj(x -> new WeightedObservedPoint(1, x, curve.applyAsDouble(x)))
                        .toList());
    }

    /** Onset of the upper half (sign 1) or the lower one (sign -1), where it is reached. */
    private OptionalDouble onset(double[] line, int sign) {
        DoubleUnaryOperator excess =
                x -> sign * (curve.applyAsDouble(sign * x) - line[0]) - ONE_DECIBEL_SHORT * line[1] * x;
        if (excess.applyAsDouble(drive) >= 0) {
            return OptionalDouble.empty();
        }
        double low = drive;
        while (excess.applyAsDouble(low) < 0 && low > 1e-3 * drive) {
            low *= 0.99;
        }
        double high = low / 0.99;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            boolean before = excess.applyAsDouble(middle) > 0;
            low = before ? middle : low;
            high = before ? high : middle;
        }
        return OptionalDouble.of(low);
    }

    @Override
    public String toString() {
        return name;
    }
}
