package clipwitness.figure;

import clipwitness.capture.Samples;
import clipwitness.capture.VerticalRange;
import clipwitness.measure.CycleTrace;
import clipwitness.measure.Harmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.TransferCurve;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** An invented stage that amplifies a 1 kHz sine of 100 mV peak and cuts it at two levels, with invented uncertainties. */
record DemoWave(double gain, double top, double bottom, boolean hasInput, int bins) {
    private static final double INPUT = 0.1;

    WaveformResult result() {
        double[] swing = new double[bins];
        Arrays.setAll(swing, i -> clipped(INPUT * Math.sin(2 * Math.PI * (i + 0.5) / bins)));
        double mean = Arrays.stream(swing).average().orElseThrow();
        double[] centred = Arrays.stream(swing).map(v -> v - mean).toArray();
        List<Harmonic> harmonics = new ArrayList<>();
        double fundamental = amplitude(centred, 1);
        double distortion = 0;
        for (int k = 2; k <= 20; k++) {
            double ratio = amplitude(centred, k) / fundamental;
            distortion += ratio * ratio;
            harmonics.add(harmonic(k, ratio, fundamental));
        }
        Map<WaveformQuantity, Measured> values = values(centred, 100 * Math.sqrt(distortion));
        return new WaveformResult(
                values,
                harmonics,
                20,
                Optional.empty(),
                Optional.of(new CycleTrace(Samples.of(centred), mean, 1e-3)),
                Optional.empty(),
                hasInput ? Optional.of(transfer()) : Optional.empty(),
                VerticalRange.UNKNOWN,
                List.of());
    }

    private double clipped(double input) {
        double v = gain * input;
        return v > top ? top + 0.03 * (v - top) : v < -bottom ? -bottom + 0.03 * (v + bottom) : v;
    }

    private static double amplitude(double[] wave, int k) {
        double c = 0;
        double s = 0;
        for (int i = 0; i < wave.length; i++) {
            double turn = 2 * Math.PI * k * (i + 0.5) / wave.length;
            c += wave[i] * Math.cos(turn);
            s += wave[i] * Math.sin(turn);
        }
        return 2 * Math.hypot(c, s) / wave.length;
    }

    private static Harmonic harmonic(int order, double ratio, double fundamental) {
        double noise = 3e-4;
        boolean lost = ratio <= noise;
        double level = 20 * Math.log10(Math.max(ratio, noise / 2));
        Measured.Value value = Measured.withNoise(level, Unit.DBC, lost ? 3 : 8.7 * noise / ratio / 2);
        return new Harmonic(
                order,
                Measured.withNoise(ratio * fundamental, Unit.VOLT, noise * fundamental / 2),
                lost ? value.asUpperBound() : value,
                OptionalDouble.empty());
    }

    private Map<WaveformQuantity, Measured> values(double[] swing, double thd) {
        double rms = Math.sqrt(Arrays.stream(swing).map(v -> v * v).average().orElseThrow());
        double up = Arrays.stream(swing).max().orElseThrow();
        double down = -Arrays.stream(swing).min().orElseThrow();
        Map<WaveformQuantity, Measured> values = new EnumMap<>(WaveformQuantity.class);
        values.put(WaveformQuantity.FREQUENCY, Measured.withNoise(1000, Unit.HERTZ, 0.01));
        values.put(WaveformQuantity.RMS, Measured.withNoise(rms, Unit.VOLT, rms * 0.02));
        Measured.Value distortion = Measured.withNoise(thd, Unit.PERCENT, 0.04 + thd * 0.03);
        values.put(WaveformQuantity.THD, thd < 0.1 ? distortion.asUpperBound() : distortion);
        values.put(WaveformQuantity.CREST_FACTOR, Measured.withNoise(Math.max(up, down) / rms, Unit.ONE, 0.012));
        values.put(WaveformQuantity.ASYMMETRY, Measured.withNoise(100 * (up - down) / (up + down), Unit.PERCENT, 0.6));
        if (hasInput) {
            values.put(
                    WaveformQuantity.CLIP_ASYMMETRY,
                    Measured.withNoise(100 * (top - bottom) / (top + bottom), Unit.PERCENT, 0.8));
            values.put(WaveformQuantity.ONSET_UP, onset(top));
            values.put(WaveformQuantity.ONSET_DOWN, onset(bottom));
        }
        return values;
    }

    private Measured onset(double level) {
        double at = level / gain * 1.13;
        return at > INPUT
                ? Measured.refused(Unit.VOLT, FigureReason.NOT_REACHED)
                : Measured.withNoise(at, Unit.VOLT, at * 0.015);
    }

    private TransferCurve transfer() {
        double[] input = new double[201];
        Arrays.setAll(input, i -> INPUT * (i - 100) / 100.0);
        double[] output = Arrays.stream(input).map(this::clipped).toArray();
        return new TransferCurve(Samples.of(input), Samples.of(output), 0.01, false);
    }
}
