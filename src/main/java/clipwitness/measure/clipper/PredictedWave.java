package clipwitness.measure.clipper;

import clipwitness.capture.Samples;
import clipwitness.capture.Waveform;
import clipwitness.measure.WaveformResult;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.quantity.Unit;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** The wave that a circuit makes of a sine, as a record of three periods, measured as a captured one is. */
final class PredictedWave {
    private static final int SAMPLES_PER_PERIOD = 512;
    private static final int PERIODS = 3;

    /** Any will do: nothing in the circuit depends on time. */
    private static final double FREQUENCY = 1_000;

    private PredictedWave() {}

    /**
     * The measured wave.
     *
     * @param scale captured output over the circuit's, not 0
     */
    static WaveformResult of(ClipperCircuit circuit, Drive drive, double scale) {
        double sign = Math.signum(scale * circuit.smallSignalGain());
        return of(p -> scale * circuit.outputAt(drive.amplitude() * p), sign * drive.inputAmplitude());
    }

    /**
     * The measured wave.
     *
     * @param output captured output, V, over the phase of the drive, which goes from -1 to 1
     * @param peak   the unit's input, V, where the drive is 1; below 0 where it inverts
     */
    static WaveformResult of(DoubleUnaryOperator output, double peak) {
        double[] period = new double[SAMPLES_PER_PERIOD];
        for (int i = 0; i < SAMPLES_PER_PERIOD; i++) {
            int mirrored = Math.floorMod(SAMPLES_PER_PERIOD / 2 - 1 - i, SAMPLES_PER_PERIOD);
            period[i] = mirrored < i ? period[mirrored] : output.applyAsDouble(sine(i));
        }
        double[] volts = new double[PERIODS * SAMPLES_PER_PERIOD];
        double[] input = new double[volts.length];
        Arrays.setAll(volts, i -> period[i % SAMPLES_PER_PERIOD]);
        Arrays.setAll(input, i -> peak * sine(i % SAMPLES_PER_PERIOD));
        double rate = FREQUENCY * SAMPLES_PER_PERIOD;
        return WaveformMeasurement.of(WaveformInput.of(new Waveform(Samples.of(volts), rate, Unit.VOLT))
                .withInput(new Waveform(Samples.of(input), rate, Unit.VOLT))
                .expecting(FREQUENCY));
    }

    private static double sine(int i) {
        return Math.sin(2 * Math.PI * (i + 0.5) / SAMPLES_PER_PERIOD);
    }
}
