package clipwitness.signal;

import clipwitness.capture.Samples;

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
    private static final int MOST_HARMONICS = 60;
    private static final double HIGHEST_OVER_SAMPLE_RATE = 0.45;

    private final HarmonicFit base;
    private final double origin;
    private final FoldedResiduals residuals;
    private final double noise;
    private final double freedom;
    private final boolean filled;

    private MeanCycle(HarmonicFit base, double origin, FoldedResiduals residuals, boolean filled) {
        this.base = base;
        this.origin = origin;
        this.residuals = residuals;
        this.filled = filled;
        double own = filled ? residuals.freedom() : residuals.count();
        this.freedom = own - base.parameters() - 1;
        double energy = filled ? residuals.scatterEnergy() : base.residualEnergy();
        this.noise = freedom > 0 ? Math.sqrt(Math.max(0, energy) / freedom) : 0;
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
            return new MeanCycle(fit, origin, new FoldedResiduals(series, fit, origin, bins), true);
        }
        int harmonics = (int) Math.min(MOST_HARMONICS, HIGHEST_OVER_SAMPLE_RATE * perPeriod);
        harmonics = Math.max(fit.count(), Math.min(harmonics, (series.count() - 3) / 3));
        HarmonicFit base = fit.withHarmonics(series, harmonics);
        return new MeanCycle(base, origin, new FoldedResiduals(series, base, origin, FEWEST_BINS), false);
    }

    /** Number of bins. */
    public int bins() {
        return residuals.bins();
    }

    /** Value at the centre of a bin, mean included; bin i is centred on (i + 0.5) / bins of the period. */
    public double value(int bin) {
        return base.at(origin + (bin + 0.5) / bins()) + (filled ? residuals.mean(bin) : 0);
    }

    /** Values of all bins. */
    public double[] values() {
        double[] values = new double[bins()];
        for (int i = 0; i < values.length; i++) {
            values[i] = value(i);
        }
        return values;
    }

    /** Scatter of single samples about the mean cycle, rms. */
    public double noise() {
        return noise;
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
        return filled ? residuals.meanSquare() - noise * noise * residuals.meanInverseCount() : 0;
    }

    /** The folded samples, in fine steps of phase. */
    public WeightedPoints points() {
        return residuals.points(base, origin);
    }
}
