package clipwitness.signal;

import clipwitness.capture.Samples;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * All periods of a record folded on one. What is folded is the distance from the harmonic fit, so that a bin's width does not blur its
 * value: the value of a bin is the fit at its centre plus the mean distance of its samples.
 *
 * <p>Where the record does not fill 256 bins with six samples each and once a period, the mean cycle is the fit of all harmonics
 * below 0.45 of the sample rate (60 at most) instead.
 */
public final class MeanCycle {
    private static final int FEWEST_BINS = 256;
    private static final int MOST_BINS = 1024;
    private static final int FEWEST_SAMPLES_IN_A_BIN = 6;
    private static final int SAMPLES_FOR_FINER_BINS = 16;
    private static final int STEEP_SHARE = 6;
    private static final int MOST_HARMONICS = 60;
    private static final double HIGHEST_OVER_SAMPLE_RATE = 0.45;

    private final HarmonicFit base;
    private final double origin;
    private final FitTable table;
    private final FoldedResiduals residuals;
    private final double[] values;
    private final double noise;
    private final double freedom;
    private final boolean filled;

    private MeanCycle(Series series, HarmonicFit base, double origin, int bins, boolean filled) {
        this.base = base;
        this.origin = origin;
        this.filled = filled;
        table = new FitTable(base);
        residuals = new FoldedResiduals(series, base, table, origin, bins);
        double own = filled ? residuals.freedom() : residuals.count();
        freedom = own - base.parameters() - 1;
        double energy = filled ? residuals.scatterEnergy() : residuals.energy();
        noise = freedom > 0 ? Math.sqrt(Math.max(0, energy) / freedom) : 0;
        values = new double[bins];
        for (int i = 0; i < bins; i++) {
            values[i] = base.at(origin + (i + 0.5) / bins) + (filled ? residuals.mean(i) : 0);
        }
    }

    /**
     * Folds a record.
     *
     * @param samples a period or more
     * @param fit     fit of that record
     * @param origin  where the cycle begins, in cycles from the middle of the record
     */
    public static MeanCycle of(Samples samples, HarmonicFit fit, double origin) {
        Series series = Series.of(samples);
        double perPeriod = 1 / fit.cyclesPerSample();
        boolean filled = perPeriod >= FEWEST_BINS && series.count() >= FEWEST_SAMPLES_IN_A_BIN * FEWEST_BINS;
        if (filled) {
            int bins = FEWEST_BINS;
            while (2 * bins <= Math.min(MOST_BINS, perPeriod) && series.count() >= SAMPLES_FOR_FINER_BINS * 2 * bins) {
                bins *= 2;
            }
            return new MeanCycle(series, fit, origin, bins, true);
        }
        int harmonics = (int) Math.min(MOST_HARMONICS, HIGHEST_OVER_SAMPLE_RATE * perPeriod);
        harmonics = Math.max(fit.count(), Math.min(harmonics, (series.count() - 3) / 3));
        HarmonicFit base = fit.withHarmonics(series, harmonics);
        return new MeanCycle(series, base, origin, FEWEST_BINS, false);
    }

    /** Number of bins. */
    public int bins() {
        return residuals.bins();
    }

    /** Values at the centres of all bins, mean included; bin i is centred on (i + 0.5) / bins of the period. */
    public double[] values() {
        return values.clone();
    }

    /** Scatter of single samples about the mean cycle, rms. */
    public double noise() {
        return noise;
    }

    /**
     * Scatter where the wave is steepest, in a sixth of the bins: there the samples run through the converter's codes, so that rounding adds
     * its full variance whatever the noise.
     */
    public double noiseOnSlopes() {
        if (!filled) {
            return noise;
        }
        int bins = bins();
        int[] steepest = IntStream.range(0, bins)
                .boxed()
                .sorted(Comparator.comparingDouble(
                        b -> -Math.abs(values[(b + 1) % bins] - values[(b + bins - 1) % bins])))
                .limit(bins / STEEP_SHARE)
                .mapToInt(Integer::intValue)
                .toArray();
        int own = Arrays.stream(steepest).map(residuals::freedom).sum();
        return own == 0
                ? noise
                : Math.sqrt(Arrays.stream(steepest)
                                .mapToDouble(residuals::scatterEnergy)
                                .sum()
                        / own);
    }

    /** Degrees of freedom that the scatter was taken from. */
    public double freedom() {
        return freedom;
    }

    /** Standard uncertainty of one bin of {@link #values()}. */
    public double binUncertainty() {
        double parameters = filled ? bins() : base.parameters();
        return noise * Math.sqrt(parameters / Math.max(1, residuals.count()));
    }

    /** Mean square of what the harmonics of the fit leave of the mean cycle, its noise taken off; may come out under 0. */
    public double remainingPower() {
        return filled ? residuals.explainedPower(noise) : 0;
    }

    /** Frequency of the fundamental over the sample rate. */
    double cyclesPerSample() {
        return base.cyclesPerSample();
    }

    /**
     * Writes what the mean cycle leaves of a record, thinned by averaging; a gap counts as 0.
     *
     * @param factor samples that are averaged
     * @param length number of averages
     * @param target where they go, from its first place on
     */
    void residuals(Samples samples, int factor, int length, double[] target) {
        for (int i = 0; i < length * factor; i++) {
            double value = samples.at(i);
            if (!Double.isNaN(value)) {
                double cycles = base.cyclesAt(i);
                double phase = cycles - origin - Math.floor(cycles - origin);
                double mean = filled ? residuals.mean(Math.min((int) (phase * bins()), bins() - 1)) : 0;
                target[i / factor] += (value - table.at(cycles - Math.floor(cycles)) - mean) / factor;
            }
        }
    }

    /** The folded samples, in fine steps of phase. */
    public WeightedPoints points() {
        return residuals.points(table, origin);
    }
}
