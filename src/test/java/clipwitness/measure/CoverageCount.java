package clipwitness.measure;

import clipwitness.fixture.ClippedWave;
import clipwitness.fixture.TestRecord;
import clipwitness.measure.capture.WaveformInput;
import clipwitness.measure.capture.WaveformMeasurement;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** How many of the stated intervals hold the truth, over records of a clipped wave anywhere against the converter's codes. */
final class CoverageCount {
    private static final double STEP = 2.0 / 256;
    private static final double INPUT_CODES = 100;
    private static final int SEED = 9973;
    private static final double PRESENT = 5;

    private final ClippedWave wave;
    private final Map<WaveformQuantity, Double> truths;
    private final double[] harmonics;
    private final Map<String, Tally> tallies = new TreeMap<>();

    private CoverageCount(ClippedWave wave) {
        this.wave = wave;
        this.truths = wave.figures();
        this.harmonics =
                IntStream.rangeClosed(0, 20).mapToDouble(wave::harmonic).toArray();
    }

    /**
     * Measures records.
     *
     * @param noise       of both channels, in codes
     * @param persistence of the noise: {@link TestRecord#withPersistence}
     * @param samples     of a record
     * @param cycles      of a record
     * @param records     how many
     * @return a tally for each figure, for all harmonics, and for the levels of those that noise cannot bury
     */
    static Map<String, Tally> of(
            ClippedWave wave, double noise, double persistence, int samples, double cycles, int records) {
        CoverageCount count = new CoverageCount(wave);
        IntStream.range(0, records).parallel().forEach(i -> count.measure(noise, persistence, samples, cycles, i));
        return count.tallies;
    }

    private void measure(double noise, double persistence, int samples, double cycles, int record) {
        Random random = new Random(SEED * (record + 1L));
        double gain = 1 + 0.02 * random.nextDouble();
        double offset = STEP * random.nextDouble();
        double phase = random.nextDouble();
        double inputStep = wave.drive() / INPUT_CODES;
        TestRecord output = TestRecord.of(p -> offset + gain * wave.outputAt(p))
                .sampled(samples / cycles, cycles, phase)
                .noisy(noise * STEP, STEP, random.nextLong())
                .withPersistence(persistence);
        TestRecord input = TestRecord.of(p -> wave.drive() * TestRecord.SINE.applyAsDouble(p))
                .sampled(samples / cycles, cycles, phase)
                .noisy(noise * inputStep, inputStep, random.nextLong());
        add(
                WaveformMeasurement.of(WaveformInput.of(output.waveform())
                        .withInput(input.waveform())
                        .expecting(TestRecord.FREQUENCY)),
                gain);
    }

    private synchronized void add(WaveformResult result, double gain) {
        truths.forEach(
                (quantity, truth) -> tally(quantity.key()).add(result.get(quantity), amplified(quantity, truth, gain)));
        for (Harmonic harmonic : result.harmonics()) {
            double truth = gain * harmonics[harmonic.order()];
            tally("harmonics").add(harmonic.amplitude(), truth);
            if (truth > PRESENT / 2 * harmonic.amplitude().expandedUncertainty().orElseThrow()) {
                tally("harmonics, dBc")
                        .add(harmonic.level(), 20 * Math.log10(harmonics[harmonic.order()] / harmonics[1]));
            }
        }
    }

    private Tally tally(String figure) {
        return tallies.computeIfAbsent(figure, f -> new Tally());
    }

    private static double amplified(WaveformQuantity quantity, double truth, double gain) {
        return switch (quantity) {
            case RMS, FUNDAMENTAL, PEAK_UP, PEAK_DOWN, CLIP_UP, CLIP_DOWN -> gain * truth;
            case GAIN, SMALL_SIGNAL_GAIN -> truth + 20 * Math.log10(gain);
            default -> truth;
        };
    }
}
