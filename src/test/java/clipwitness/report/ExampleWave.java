package clipwitness.report;

import clipwitness.capture.Samples;
import clipwitness.capture.VerticalRange;
import clipwitness.measure.CycleTrace;
import clipwitness.measure.Harmonic;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.measure.WaveformResult;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Invented figures of one wave: a sine driven into clippers that are asymmetric in the state {@code new}. */
final class ExampleWave {
    private static final int BINS = 250;

    private ExampleWave() {}

    static WaveformResult of(String state, double gain, int harmonicCount) {
        List<Harmonic> harmonics = new ArrayList<>();
        for (int k = 2; k <= harmonicCount; k++) {
            harmonics.add(harmonic(state, gain, k));
        }
        return new WaveformResult(
                values(state, gain),
                harmonics,
                harmonicCount,
                Optional.empty(),
                Optional.of(cycle(state, gain)),
                Optional.empty(),
                Optional.empty(),
                VerticalRange.UNKNOWN,
                List.of());
    }

    private static Harmonic harmonic(String state, double gain, int k) {
        boolean even = k % 2 == 0;
        double level = (even ? (isNew(state) ? -24 : -62) : -8) - 3.1 * k - (100 - gain) / 4;
        Measured amplitude = ExampleJob.value(0.3 * Math.pow(10, level / 20), Unit.VOLT, 0.0004);
        OptionalDouble phase = level > -70 ? OptionalDouble.of(even ? 90.4 : 180) : OptionalDouble.empty();
        return new Harmonic(
                k, amplitude, ExampleJob.value(level, Unit.DBC, 0.03 * k + Math.max(0, -60 - level)), phase);
    }

    private static boolean isNew(String state) {
        return state.equals("new");
    }

    static Map<WaveformQuantity, Measured> values(String state, double gain) {
        double drive = gain / 100;
        boolean asymmetric = isNew(state);
        Map<WaveformQuantity, Measured> values = new EnumMap<>(WaveformQuantity.class);
        double rms = asymmetric ? 0.06 + 0.081 * drive : 0.064 + 0.214 * drive;
        put(values, WaveformQuantity.FREQUENCY, 200.013, 0.004);
        put(values, WaveformQuantity.MEAN, -0.0021, 0.0011);
        put(values, WaveformQuantity.RMS, rms, 0.0081 * rms / 0.28);
        put(values, WaveformQuantity.FUNDAMENTAL, rms * 1.39, 0.011 * rms / 0.28);
        put(values, WaveformQuantity.PEAK_UP, rms * 1.21, 0.012 * rms / 0.28);
        put(values, WaveformQuantity.PEAK_DOWN, rms * (asymmetric ? 1.34 : 1.22), 0.012 * rms / 0.28);
        put(values, WaveformQuantity.CREST_FACTOR, 1.41 - 0.22 * drive, 0.0034);
        put(values, WaveformQuantity.THD, asymmetric ? 1.4 + 24.2 * drive : 0.6 + 6.1 * drive, 0.06 + 0.1 * drive);
        put(values, WaveformQuantity.THD_PLUS_NOISE, asymmetric ? 2 + 24 * drive : 1 + 6.4 * drive, 0.07);
        put(values, WaveformQuantity.NOISE, 0.00041, 0.00001);
        put(values, WaveformQuantity.ASYMMETRY, asymmetric ? -5.1 * drive : 0.22, 0.13);
        put(values, WaveformQuantity.EVEN_HARMONICS, asymmetric ? -22.4 : -61.2, asymmetric ? 0.2 : 2.1);
        put(values, WaveformQuantity.ODD_HARMONICS, -19.3 + 4 * drive, 0.11);
        put(values, WaveformQuantity.HIGH_HARMONICS, asymmetric ? -42.9 : -38.6, 0.4);
        put(values, WaveformQuantity.LEAN, 0.31, 0.05);
        put(values, WaveformQuantity.INPUT_FUNDAMENTAL, 0.1002, 0.0035);
        put(values, WaveformQuantity.GAIN, 20 * Math.log10(rms / 0.0708), 0.05);
        values.put(
                WaveformQuantity.INPUT_THD,
                ((Measured.Value) ExampleJob.value(0.012, Unit.PERCENT, 0.021)).asUpperBound());
        values.put(WaveformQuantity.ONSET_UP, onset(gain, asymmetric ? 0.021 : 0.044));
        values.put(WaveformQuantity.ONSET_DOWN, onset(gain, 0.045));
        put(values, WaveformQuantity.CLIP_ASYMMETRY, asymmetric ? -33.1 : 0.36, 0.4);
        return values;
    }

    private static Measured onset(double gain, double atFull) {
        return gain < 25
                ? Measured.refused(Unit.VOLT, FigureReason.NOT_REACHED)
                : ExampleJob.value(atFull * 100 / gain, Unit.VOLT, 0.0006);
    }

    private static void put(Map<WaveformQuantity, Measured> values, WaveformQuantity q, double value, double u) {
        values.put(q, ExampleJob.value(value, q.unit(), u));
    }

    private static CycleTrace cycle(String state, double gain) {
        double[] bins = new double[BINS];
        double drive = 0.1 + 0.3 * gain / 100;
        for (int i = 0; i < BINS; i++) {
            double v = drive * Math.sin(2 * Math.PI * (i + 0.5) / BINS);
            bins[i] = Math.max(-0.25, Math.min(isNew(state) ? 0.13 : 0.25, v));
        }
        return new CycleTrace(Samples.of(bins), 0, 0.0003);
    }
}
