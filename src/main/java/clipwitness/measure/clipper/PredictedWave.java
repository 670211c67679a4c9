package clipwitness.measure.clipper;

import clipwitness.capture.Samples;
import clipwitness.measure.CycleTrace;
import clipwitness.measure.Measured;
import clipwitness.measure.WaveformQuantity;
import clipwitness.quantity.Decibels;
import clipwitness.quantity.Unit;
import clipwitness.reason.FigureReason;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;

/**
 * The wave that a circuit makes of a sine. It is periodic, free of noise and the same on its way up and down, so that half a cycle tells all: harmonics are the
 * coefficients of its cosine series, peaks and onsets those of the curve itself. The figures are those of {@link WaveformQuantity}, without uncertainty.
 */
final class PredictedWave {
    private static final int PLACES = 512;
    private static final int HARMONICS = 20;
    private static final int BINS = 256;

    /** Rounding makes harmonics, too: one so far below the fundamental is none. */
    private static final double NO_HARMONIC = 1e-9;

    /** Cosine of each harmonic, the fundamental first, at places in the middle of even steps over half a cycle. */
    private static final double[][] COSINES = cosines();

    private final Map<WaveformQuantity, Measured> values = new EnumMap<>(WaveformQuantity.class);
    private final Map<Integer, Measured> levels = new TreeMap<>();
    private final CycleTrace cycle;

    private PredictedWave(DoubleUnaryOperator rising, double[] volts, double inputAmplitude) {
        double mean = 0;
        for (double v : volts) {
            mean += v / PLACES;
        }
        double rms = rms(volts, mean);
        putPeaks(new PredictedPeaks(rising, volts), rising.applyAsDouble(0), mean, rms);
        putHarmonics(volts);
        putOnsets(rising, inputAmplitude);
        cycle = trace(rising, mean);
    }

    /**
     * The wave of a sine.
     *
     * @param output         captured output, V, over the phase of the drive, which goes from -1 to 1
     * @param inputAmplitude peak of the unit's input, V, above 0
     */
    static PredictedWave of(DoubleUnaryOperator output, double inputAmplitude) {
        double[] volts = Arrays.stream(COSINES[0]).map(output).toArray();
        if (coefficient(volts, 1) >= 0) {
            return new PredictedWave(output, volts, inputAmplitude);
        }
        DoubleUnaryOperator rising = p -> output.applyAsDouble(-p);
        return new PredictedWave(rising, Arrays.stream(COSINES[0]).map(rising).toArray(), inputAmplitude);
    }

    private static double[][] cosines() {
        double[][] cosines = new double[HARMONICS][PLACES];
        for (int k = 1; k <= HARMONICS; k++) {
            for (int i = 0; i < PLACES; i++) {
                cosines[k - 1][i] = Math.cos(Math.PI * k * (i + 0.5) / PLACES);
            }
        }
        return cosines;
    }

    private static double rms(double[] volts, double mean) {
        double power = 0;
        for (double v : volts) {
            power += (v - mean) * (v - mean) / PLACES;
        }
        return Math.sqrt(power);
    }

    private void putPeaks(PredictedPeaks peaks, double centre, double mean, double rms) {
        double up = peaks.highest() - mean;
        double down = mean - peaks.lowest();
        double clipUp = peaks.highest() - centre;
        double clipDown = centre - peaks.lowest();
        put(WaveformQuantity.MEAN, mean);
        put(WaveformQuantity.RMS, rms);
        put(WaveformQuantity.PEAK_UP, up);
        put(WaveformQuantity.PEAK_DOWN, down);
        put(WaveformQuantity.ASYMMETRY, 100 * (up - down) / (up + down));
        put(WaveformQuantity.CREST_FACTOR, Math.max(up, down) / rms);
        put(WaveformQuantity.CLIP_UP, clipUp);
        put(WaveformQuantity.CLIP_DOWN, clipDown);
        put(WaveformQuantity.CLIP_ASYMMETRY, 100 * (clipUp - clipDown) / (clipUp + clipDown));
    }

    private void putHarmonics(double[] volts) {
        double fundamental = coefficient(volts, 1);
        double squares = 0;
        for (int k = 2; k <= HARMONICS; k++) {
            double ratio = Math.abs(coefficient(volts, k)) / fundamental;
            squares += ratio * ratio;
            levels.put(
                    k,
                    ratio > NO_HARMONIC
                            ? Measured.of(Decibels.ofAmplitude(ratio), Unit.DBC)
                            : Measured.refused(Unit.DBC, FigureReason.NO_SUCH_HARMONIC));
        }
        put(WaveformQuantity.THD, 100 * Math.sqrt(squares));
    }

    private static double coefficient(double[] volts, int harmonic) {
        double[] cosines = COSINES[harmonic - 1];
        double sum = 0;
        for (int i = 0; i < PLACES; i++) {
            sum += volts[i] * cosines[i];
        }
        return 2 * sum / PLACES;
    }

    private void putOnsets(DoubleUnaryOperator rising, double inputAmplitude) {
        PredictedOnsets onsets = PredictedOnsets.of(rising);
        values.put(WaveformQuantity.ONSET_UP, onsets.up(inputAmplitude));
        values.put(WaveformQuantity.ONSET_DOWN, onsets.down(inputAmplitude));
    }

    private void put(WaveformQuantity quantity, double value) {
        values.put(quantity, Measured.of(value, quantity.unit()));
    }

    private static CycleTrace trace(DoubleUnaryOperator rising, double mean) {
        double[] swing = new double[BINS];
        for (int i = 0; i < BINS; i++) {
            int mirrored = Math.floorMod(BINS / 2 - 1 - i, BINS);
            swing[i] = mirrored < i
                    ? swing[mirrored]
                    : rising.applyAsDouble(Math.sin(2 * Math.PI * (i + 0.5) / BINS)) - mean;
        }
        return new CycleTrace(Samples.of(swing), mean, 0);
    }

    /** A figure. */
    Measured get(WaveformQuantity quantity) {
        return values.get(quantity);
    }

    /** Levels of the harmonics from the second up by their order, dBc. */
    Map<Integer, Measured> levels() {
        return levels;
    }

    /** The wave. */
    CycleTrace cycle() {
        return cycle;
    }
}
