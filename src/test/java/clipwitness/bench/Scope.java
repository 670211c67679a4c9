package clipwitness.bench;

import clipwitness.capture.Samples;
import java.util.List;
import java.util.Random;

/**
 * An oscilloscope with a converter of 8 bits, 25 codes a division, that dithers itself with its own noise.
 *
 * @param samples  samples of a record
 * @param clock    how far its clock is off, a ratio
 * @param noise    its noise, rms, in codes
 */
public record Scope(int samples, double clock, double noise) {
    private static final int CODES_PER_DIVISION = 25;
    private static final int LOWEST_CODE = -128;
    private static final int HIGHEST_CODE = 127;
    private static final double BEFORE_TRIGGER = 0.4;
    private static final int PERIODS = 6;

    /** Sample interval in s of the finest time base of 1, 2, 5 that shows six periods of a frequency in Hz. */
    public double intervalFor(double frequency) {
        return Steps.atLeast(PERIODS / (frequency * samples));
    }

    /** One record at a stated sample interval in s; the trigger falls anywhere between two samples. */
    public Recording record(Random random, double interval, List<Probe> probes) {
        int before = (int) (BEFORE_TRIGGER * samples);
        double late = random.nextDouble();
        List<Column> channels = probes.stream()
                .map(probe -> new Column(probe.name(), "V", 4, convert(random, probe, interval, before - late)))
                .toList();
        return new Recording(-before * interval, interval, channels);
    }

    private Samples convert(Random random, Probe probe, double interval, double trigger) {
        double step = probe.perDivision() / CODES_PER_DIVISION;
        double[] volts = new double[samples];
        for (int i = 0; i < samples; i++) {
            double time = (i - trigger) * interval * (1 + clock);
            double code = Math.rint(probe.voltage().applyAsDouble(time) / step + noise * random.nextGaussian());
            volts[i] = Math.max(LOWEST_CODE, Math.min(HIGHEST_CODE, code)) * step;
        }
        return Samples.of(volts);
    }
}
