package clipwitness.measure;

import clipwitness.capture.Samples;
import clipwitness.capture.Waveform;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.measure.capture.WaveformMeasurement;
import clipwitness.quantity.Unit;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;

/**
 * A synthetic record: a function of the phase in cycles, sampled, with seeded noise and a converter where they are asked for.
 *
 * @param shape           value at a phase from 0 to 1
 * @param samplesPerCycle samples a cycle
 * @param cycles          length of the record in cycles
 * @param phase           phase of the first sample, cycles
 * @param noise           standard deviation of the noise
 * @param persistence     correlation of the noise of one sample with that of the next: 0 for white noise
 * @param step            converter step, 0 for none
 * @param seed            seed of the noise
 */
public record TestRecord(
        DoubleUnaryOperator shape,
        double samplesPerCycle,
        double cycles,
        double phase,
        double noise,
        double persistence,
        double step,
        long seed) {
    public static final double FREQUENCY = 1000;

    /** A sine of amplitude 1. */
    public static final DoubleUnaryOperator SINE = p -> Math.sin(2 * Math.PI * p);

    public static TestRecord of(DoubleUnaryOperator shape) {
        return new TestRecord(shape, 500, 10.37, 0.123, 0, 0, 0, 1);
    }

    /** A curve of slope 1 that ends at two levels. */
    public static DoubleUnaryOperator clip(double up, double down) {
        return x -> Math.max(-down, Math.min(up, x));
    }

    public TestRecord sampled(double samplesPerCycle, double cycles, double phase) {
        return new TestRecord(shape, samplesPerCycle, cycles, phase, noise, persistence, step, seed);
    }

    public TestRecord noisy(double noise, double step, long seed) {
        return new TestRecord(shape, samplesPerCycle, cycles, phase, noise, persistence, step, seed);
    }

    /** The same noise power, but of first-order autoregressive noise: it lies at low frequencies. */
    TestRecord withPersistence(double persistence) {
        return new TestRecord(shape, samplesPerCycle, cycles, phase, noise, persistence, step, seed);
    }

    public Waveform waveform() {
        double[] values = new double[(int) Math.round(samplesPerCycle * cycles)];
        Random random = new Random(seed);
        double last = random.nextGaussian();
        for (int i = 0; i < values.length; i++) {
            double at = i / samplesPerCycle + phase;
            last = persistence * last + Math.sqrt(1 - persistence * persistence) * random.nextGaussian();
            double value = shape.applyAsDouble(at - Math.floor(at)) + noise * last;
            values[i] = step > 0 ? Math.rint(value / step) * step : value;
        }
        return new Waveform(Samples.of(values), FREQUENCY * samplesPerCycle, Unit.VOLT);
    }

    public WaveformResult measured() {
        return WaveformMeasurement.of(WaveformInput.of(waveform()).expecting(FREQUENCY));
    }

    /** The capture of a unit that has this record's shape as input and a memoryless curve. */
    public WaveformInput through(DoubleUnaryOperator curve) {
        TestRecord output = new TestRecord(
                p -> curve.applyAsDouble(shape.applyAsDouble(p)),
                samplesPerCycle,
                cycles,
                phase,
                noise,
                persistence,
                step,
                seed + 1);
        return WaveformInput.of(output.waveform()).withInput(waveform()).expecting(FREQUENCY);
    }
}
