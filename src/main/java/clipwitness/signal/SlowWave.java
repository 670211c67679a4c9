package clipwitness.signal;

import clipwitness.capture.Samples;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;

/**
 * What runs slower than the tone in a record: hum, drift or a beat, up to 0.8 of the fundamental. It is a series of half-period
 * cosines over the record, cos(pi j t) for t from 0 to 1, fitted to what the mean cycle leaves, as many as stand out of the noise. The noise is
 * the density between the harmonics from the first to the fifth.
 *
 * @param terms   coefficients of the cosines from j = 1, V
 * @param cycles  periods of the strongest sine of the series over the record
 * @param amplitude half the span of the series over the record, V
 * @param noise   standard uncertainty of the amplitude, V
 */
public record SlowWave(Samples terms, double cycles, double amplitude, double noise) {
    /** Half periods of the fastest slow wave in a period of the tone: 0.8 of its frequency. */
    private static final double HIGHEST = 1.6;

    private static final double DEVIATIONS = 8;
    private static final double MARGIN = 15;
    /** Noise may be so many times as dense under the tone as above it. */
    private static final double COLOURED = 3;

    /** A density from few terms may be that much too low, over the root of their number. */
    private static final double FEW = 6;

    private static final double STANDS_OUT = 12;
    private static final int FEWEST_PLACES = 256;

    /** Places of the record at which a sine is compared with the series, to a half period of the faster of the two: under 1 nothing tells them apart. */
    private static final int PLACES_A_HALF_PERIOD = 4;

    private static final double FINEST_CYCLE = 0.05;

    /** The sine that fits best lies within so many half periods of the strongest cosine. */
    private static final int NEAR_THE_STRONGEST = 64;

    /**
     * Looks for a slow wave.
     *
     * @param rest what the mean cycle leaves of the record
     * @return nothing where noise explains what is slow, or the record is too short to tell
     */
    public static Optional<SlowWave> of(CosineSeries rest) {
        int slow = (int) (HIGHEST * rest.periods());
        if (rest.noiseTerms() == 0) {
            return Optional.empty();
        }
        double energy = 0;
        for (int j = 1; j <= slow; j++) {
            energy += rest.energy(j);
        }
        double fewness = 1 + FEW / Math.sqrt(rest.noiseTerms());
        double density = rest.density();
        if (!(energy > fewness * density * (COLOURED * slow + DEVIATIONS * Math.sqrt(2.0 * slow) + MARGIN))) {
            return Optional.empty();
        }
        int last = slow;
        while (last > 1 && rest.energy(last) < STANDS_OUT * density) {
            last--;
        }
        return Optional.of(of(rest.terms(last), Math.sqrt(2 * density / rest.length())));
    }

    private static SlowWave of(Samples terms, double noise) {
        double[] wave = wave(terms, 0);
        double low = Arrays.stream(wave).min().orElse(0);
        double high = Arrays.stream(wave).max().orElse(0);
        return new SlowWave(terms, strongest(wave, terms), (high - low) / 2, noise * Math.sqrt(terms.size()));
    }

    /** The series at places close enough for itself and for a sine of so many cycles over the record, V. */
    private static double[] wave(Samples terms, double cycles) {
        double halfPeriods = Math.max(terms.size(), 2 * cycles);
        int places = Math.max(FEWEST_PLACES, (int) Math.ceil(PLACES_A_HALF_PERIOD * halfPeriods));
        return IntStream.range(0, places)
                .mapToDouble(i -> at(terms, (i + 0.5) / places))
                .toArray();
    }

    /**
     * Share of the series' power that a sine beside a constant explains, at most 1.
     *
     * @param cycles periods of the sine over the record, above 0
     */
    public double shareOfSine(double cycles) {
        return explained(wave(terms, cycles), cycles);
    }

    /** A sine beside a constant that fits the series best. */
    public Sine sine(double cycles) {
        double[] found = regression(wave(terms, cycles), cycles).estimateRegressionParameters();
        return new Sine(found[0], Math.hypot(found[1], found[2]));
    }

    /**
     * A sine that stands for the series.
     *
     * @param constant  constant beside it, V: less it, the sine has this mean over the record
     * @param amplitude amplitude, V
     */
    public record Sine(double constant, double amplitude) {}

    /** Value at a share of the record, V. */
    public double at(double share) {
        return at(terms, share);
    }

    private static double at(Samples terms, double share) {
        double sum = 0;
        for (int j = 1; j <= terms.size(); j++) {
            sum += terms.at(j - 1) * Math.cos(Math.PI * j * share);
        }
        return sum;
    }

    /** Periods over the record of the sine beside a constant that leaves least. */
    private static double strongest(double[] wave, Samples terms) {
        int strongest = IntStream.range(0, terms.size())
                .boxed()
                .max(Comparator.comparingDouble(j -> Math.abs(terms.at(j))))
                .orElse(0);
        double first = (strongest + 1 - NEAR_THE_STRONGEST) / 2.0;
        double last = Math.min(terms.size() + 1, strongest + 1 + NEAR_THE_STRONGEST) / 2.0;
        double best = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (double cycles = Math.max(0.25, first); cycles <= last; cycles += FINEST_CYCLE) {
            double explained = explained(wave, cycles);
            if (explained > most) {
                most = explained;
                best = cycles;
            }
        }
        return best;
    }

    /** Share of the series that a sine beside a constant explains. */
    private static double explained(double[] wave, double cycles) {
        return regression(wave, cycles).calculateRSquared();
    }

    private static OLSMultipleLinearRegression regression(double[] wave, double cycles) {
        double[][] points = new double[wave.length][];
        for (int i = 0; i < wave.length; i++) {
            double angle = 2 * Math.PI * cycles * (i + 0.5) / wave.length;
            points[i] = new double[] {Math.cos(angle), Math.sin(angle)};
        }
        OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
        regression.newSampleData(wave, points);
        return regression;
    }

    /** The record without it. */
    public Samples without(Samples samples) {
        double[] values = samples.toArray();
        for (int i = 0; i < values.length; i++) {
            values[i] -= at((i + 0.5) / values.length);
        }
        return Samples.of(values);
    }

    /** Sum of two series, the second with its own uncertainty. */
    public SlowWave plus(SlowWave other) {
        double[] sum = new double[Math.max(terms.size(), other.terms.size())];
        for (int j = 0; j < sum.length; j++) {
            sum[j] = (j < terms.size() ? terms.at(j) : 0) + (j < other.terms.size() ? other.terms.at(j) : 0);
        }
        return of(Samples.of(sum), noise / Math.sqrt(terms.size()));
    }
}
