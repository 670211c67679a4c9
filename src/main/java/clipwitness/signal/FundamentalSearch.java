package clipwitness.signal;

import clipwitness.capture.Samples;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Finds the frequency of the fundamental closely enough for {@link JointFit} to start from. Frequencies are relative to the sample rate.
 */
public final class FundamentalSearch {
    private static final int SECTION_PERIODS = 12;
    private static final int SAMPLES_PER_PERIOD = 32;
    private static final int HARMONICS = 4;
    private static final double REACH = 1.4;
    private static final double GRID = 0.25;
    private static final double SHORTEST = 0.5;
    /** A line under a quarter of its own harmonic (-12 dB) is what a doubler leaves of its input, not what distortion refers to. */
    private static final double SMALLEST_SHARE = 0.25;

    private static final double SIGNIFICANT = 10;

    private FundamentalSearch() {}

    /**
     * The line within half an octave of an expected frequency that explains most of the record together with its harmonics. Twelve
     * periods are searched; longer records then refine it section by section, each four times the last. Empty where the record cannot hold
     * such a line: a period over twice as long as the record, or a frequency above 0.45 of the sample rate.
     *
     * @param samples           the record
     * @param expectedPerSample expected frequency over the sample rate
     */
    public static OptionalDouble near(Samples samples, double expectedPerSample) {
        boolean possible = expectedPerSample < UsableBand.HIGHEST_OVER_SAMPLE_RATE
                && samples.size() * expectedPerSample > SHORTEST;
        return possible ? OptionalDouble.of(nearest(samples, expectedPerSample)) : OptionalDouble.empty();
    }

    private static double nearest(Samples samples, double expectedPerSample) {
        int length = (int) Math.min(samples.size(), Math.ceil(SECTION_PERIODS / expectedPerSample));
        int factor = Math.max(1, (int) (1 / (expectedPerSample * SAMPLES_PER_PERIOD)));
        FitSamples section = section(samples, length, factor);
        double best = strongestOnGrid(section, expectedPerSample * factor) / factor;
        int harmonics = harmonicsFor(best * REACH);
        best = refined(section, best * factor, harmonics) / factor;
        while (length < samples.size()) {
            length = (int) Math.min(samples.size(), 4L * length);
            best = refined(section(samples, length, factor), best * factor, harmonics) / factor;
        }
        return best;
    }

    /** The frequency that fits best; the starting frequency, where the section has too few samples with a value. */
    private static double refined(FitSamples section, double start, int harmonics) {
        if (section.count() <= 2 * harmonics + 2) {
            return start;
        }
        JointFit found = JointFit.ofSeries(List.of(section), start, harmonics);
        return found.strayed() ? start : found.cyclesPerSample();
    }

    private static double strongestOnGrid(FitSamples section, double expected) {
        double step = GRID / section.size();
        double lowest = Math.max(expected / REACH, SHORTEST / section.size());
        double best = expected;
        double least = Double.POSITIVE_INFINITY;
        for (double f = lowest; f <= expected * REACH && f < UsableBand.HIGHEST_OVER_SAMPLE_RATE; f += step) {
            int harmonics = Math.min(harmonicsFor(f), (section.count() - 3) / 2);
            double left = harmonics < 1
                    ? Double.POSITIVE_INFINITY
                    : LinearFit.settled(section, f, harmonics).residualEnergy();
            if (left < least) {
                least = left;
                best = f;
            }
        }
        return best;
    }

    private static int harmonicsFor(double perSample) {
        return Math.max(1, Math.min(HARMONICS, (int) (UsableBand.HIGHEST_OVER_SAMPLE_RATE / perSample)));
    }

    /**
     * The fundamental of a record of which nothing is known: the strongest line, or the half or third of it where lines at its other
     * multiples show that the strongest one is a harmonic. Empty where the record holds less than two periods of anything, or nothing but a
     * constant.
     */
    public static OptionalDouble strongest(Samples samples) {
        OptionalDouble line = StrongestLine.of(samples);
        if (line.isEmpty()) {
            return line;
        }
        double strongest = line.getAsDouble();
        double best = nearest(samples, strongest);
        for (int part = 3; part >= 2; part--) {
            if (samples.size() * strongest / part >= 2 && isHarmonic(samples, best / part, part)) {
                return OptionalDouble.of(nearest(samples, best / part));
            }
        }
        return OptionalDouble.of(best);
    }

    /** Whether the lines of a candidate that are no multiples of the strongest one hold a significant share. */
    private static boolean isHarmonic(Samples samples, double candidate, int part) {
        int length = (int) Math.min(samples.size(), Math.ceil(SECTION_PERIODS / candidate));
        int orders = Math.min(2 * part, (int) (UsableBand.HIGHEST_OVER_SAMPLE_RATE / candidate));
        FitSamples section = section(samples, length, 1);
        if (orders <= part || section.count() <= 4 * orders) {
            return false;
        }
        LinearFit fit = LinearFit.settled(section, candidate, orders);
        double[] coefficients = fit.coefficients();
        double other = 0;
        double multiples = 0;
        for (int k = 1; k <= orders; k++) {
            double power = Math.pow(coefficients[2 * k - 1], 2) + Math.pow(coefficients[2 * k], 2);
            other += k % part == 0 ? 0 : power;
            multiples += k % part == 0 ? power : 0;
        }
        double noise = 4 * fit.residualEnergy() / section.count() / section.count();
        return other > SMALLEST_SHARE * SMALLEST_SHARE * multiples && other > SIGNIFICANT * orders * noise;
    }

    /** The beginning of a record, thinned by averaging. */
    private static FitSamples section(Samples samples, int length, int factor) {
        double[] thinned = new double[length / factor];
        for (int i = 0; i < thinned.length; i++) {
            double sum = 0;
            for (int j = 0; j < factor; j++) {
                sum += samples.at(i * factor + j);
            }
            thinned[i] = sum / factor;
        }
        return FitSamples.of(Samples.of(thinned));
    }
}
