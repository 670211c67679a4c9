package clipwitness.signal;

import clipwitness.capture.Samples;
import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * All periods of a record folded on one. What is folded is the distance from the harmonic fit, so that a bin's width does not blur its
 * value: the value of a bin is the fit at its centre plus the mean distance of its samples. The fit has more harmonics than are wanted,
 * 40 as far as they lie below 0.45 of the sample rate.
 *
 * <p>Where the record does not fill 256 bins with six samples each and once a period, the mean cycle is the fit of all harmonics
 * below 0.45 of the sample rate (60 at most) instead.
 */
public final class MeanCycle {
    private static final int FEWEST_BINS = 256;
    private static final int MOST_BINS = 1024;
    private static final int FEWEST_SAMPLES_IN_A_BIN = 6;
    private static final int SAMPLES_FOR_FINER_BINS = 16;
    private static final int FEWEST_STEEP_BINS = 6;

    /** Standard deviation of a median over that of a mean: root of half pi. */
    private static final double EFFICIENCY_OF_MEDIAN = Math.sqrt(Math.PI / 2);

    private static final double SLOPE_STEP = 1e-4;

    private static final int HARMONICS_BELOW_BINS = 40;
    private static final int MOST_HARMONICS = 60;

    private final HarmonicFit fit;
    private final HarmonicFit base;
    private final double origin;
    private final FoldedResiduals residuals;
    private final double[] values;
    private final double noise;
    private final double freedom;
    private final boolean filled;
    private FitTable table; // immutable, as the points: two threads may both work them out, to the same
    private WeightedPoints points;

    private MeanCycle(FitSamples series, HarmonicFit base, int harmonics, double origin, int bins, boolean filled) {
        this.fit = base.first(harmonics);
        this.base = base;
        this.origin = origin;
        this.filled = filled;
        table = new FitTable(base);
        residuals = new FoldedResiduals(series, base, table, origin, bins);
        double own = filled ? residuals.freedom() : residuals.count();
        freedom = own - (filled ? fit : base).parameters() - 1;
        double energy = filled ? residuals.scatterEnergy() : residuals.energy();
        noise = freedom > 0 ? Math.sqrt(Math.max(0, energy) / freedom) : 0;
        values = FitTable.values(base, origin + 0.5 / bins, bins);
        for (int i = 0; filled && i < bins; i++) {
            values[i] += residuals.mean(i);
        }
    }

    /** The same residuals about another base of as many harmonics. */
    private MeanCycle(MeanCycle cycle, HarmonicFit base, PointHarmonics harmonics) {
        this.base = base;
        fit = base.first(cycle.fit.count());
        origin = cycle.origin;
        filled = cycle.filled;
        residuals = cycle.residuals;
        freedom = cycle.freedom;
        noise = cycle.noise;
        HarmonicFit change = base.less(cycle.base);
        points = harmonics.plus(change);
        values = FitTable.values(change, origin + 0.5 / bins(), bins());
        for (int i = 0; i < values.length; i++) {
            values[i] += cycle.values[i];
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
        FitSamples series = FitSamples.of(samples);
        double perPeriod = 1 / fit.cyclesPerSample();
        boolean filled = perPeriod >= FEWEST_BINS && series.count() >= FEWEST_SAMPLES_IN_A_BIN * FEWEST_BINS;
        int bins = FEWEST_BINS;
        while (filled
                && 2 * bins <= Math.min(MOST_BINS, perPeriod)
                && series.count() >= SAMPLES_FOR_FINER_BINS * 2 * bins) {
            bins *= 2;
        }
        HarmonicFit base = fit.withHarmonics(series, harmonics(series, fit, filled));
        return new MeanCycle(series, base, fit.count(), origin, bins, filled);
    }

    private static int harmonics(FitSamples series, HarmonicFit fit, boolean filled) {
        int most = filled ? HARMONICS_BELOW_BINS : MOST_HARMONICS;
        int below = (int) Math.min(most, UsableBand.HIGHEST_OVER_SAMPLE_RATE / fit.cyclesPerSample());
        return Math.max(fit.count(), Math.min(below, (series.count() - 3) / 3));
    }

    /**
     * The cycle with a function applied to each harmonic that it was folded by, those above the fit's number included; the scatter of the samples stays
     * as it is.
     */
    public MeanCycle with(HarmonicFit.Change change) {
        return variants().apply(change);
    }

    /** The same for many functions: what the cycles share is worked out once. Not for several threads at a time. */
    public Function<HarmonicFit.Change, MeanCycle> variants() {
        PointHarmonics harmonics = new PointHarmonics(points(), origin);
        return change -> new MeanCycle(this, base.with(change), harmonics);
    }

    /** Number of bins. */
    public int bins() {
        return residuals.bins();
    }

    /** Values at the centres of all bins, mean included; bin i is centred on (i + 0.5) / bins of the period. */
    public double[] values() {
        return values.clone();
    }

    /**
     * Values of the harmonics that have at least so large an amplitude, mean included, at steps of the period.
     *
     * @param places how many values, 4096 or less, a power of 2; place i lies at i / places of the period
     */
    public double[] smooth(int places, double smallest) {
        return FitTable.values(base.withoutHarmonicsBelow(smallest), origin, places);
    }

    /** Value of all harmonics that the cycle was folded by, mean included, at a phase of the cycle. */
    public double fitAt(double phase) {
        return base.at(origin + phase);
    }

    /** Slope of that, a cycle. */
    public double fitSlopeAt(double phase) {
        return (fitAt(phase + SLOPE_STEP) - fitAt(phase - SLOPE_STEP)) / (2 * SLOPE_STEP);
    }

    /** Variance of that value for samples of unit variance, on average over the cycle: coefficients over samples. */
    public double fitVariance() {
        return base.parameters() / (double) Math.max(1, residuals.count());
    }

    /** Amplitude of one of the harmonics that the cycle was folded by. */
    public double amplitude(int order) {
        return base.amplitude(order);
    }

    /** Number of samples. */
    public int samples() {
        return residuals.count();
    }

    /** Number of harmonics that the cycle was folded by. */
    public int harmonics() {
        return base.count();
    }

    /** Scatter of single samples about the mean cycle, rms. */
    public double noise() {
        return noise;
    }

    /**
     * The least that the scatter may be where the wave is at least half as steep as anywhere, a standard uncertainty under its estimate:
     * there the samples run through the converter's codes, so that rounding adds its full variance whatever the noise. The median of the
     * bins, because corners of the wave in a bin are no noise. Empty where too few bins are so steep.
     */
    public OptionalDouble leastNoiseOnSlopes() {
        double steepest =
                IntStream.range(0, bins()).mapToDouble(this::rise).max().orElseThrow();
        int[] steep =
                IntStream.range(0, bins()).filter(b -> rise(b) >= steepest / 2).toArray();
        return steep.length < FEWEST_STEEP_BINS ? OptionalDouble.empty() : OptionalDouble.of(leastNoise(steep));
    }

    /** The least that the scatter may be in half of the bins. */
    public double leastNoise() {
        return leastNoise(IntStream.range(0, bins()).toArray());
    }

    private double leastNoise(int[] some) {
        int own = Arrays.stream(some).map(residuals::freedom).sum();
        double variance = own > 0 ? residuals.medianVariance(some) : noise * noise;
        double known = own > 0 ? own : freedom;
        return Math.sqrt(variance * Math.max(0, 1 - EFFICIENCY_OF_MEDIAN * Math.sqrt(2 / Math.max(1, known))));
    }

    private double rise(int bin) {
        int n = values.length;
        return Math.abs(values[(bin + 1) % n] - values[(bin + n - 1) % n]);
    }

    /** Degrees of freedom that the scatter was taken from. */
    public double freedom() {
        return freedom;
    }

    /** Standard uncertainty of one bin of {@link #values()}. */
    public double binUncertainty() {
        return filled ? independentBinUncertainty() : uncertainty(base.parameters());
    }

    /** Standard uncertainty of one bin as it counts in a sum over many: bins of a fit are known better, but neighbours are correlated. */
    public double independentBinUncertainty() {
        return uncertainty(bins());
    }

    /** Number of harmonics that the noise of a cycle made of a fit alone consists of; empty where each bin has noise of its own. */
    public OptionalInt harmonicsOfNoise() {
        return filled ? OptionalInt.empty() : OptionalInt.of(base.count());
    }

    private double uncertainty(double parameters) {
        return noise * Math.sqrt(parameters / Math.max(1, residuals.count()));
    }

    /**
     * The fit that the cycle was folded by, with the coefficients that its harmonics have in the presence of higher ones: a record that
     * ends within a period weights the parts of the cycle unevenly, so that harmonics left out of a fit bias those in it.
     */
    public HarmonicFit fit() {
        return fit;
    }

    /** Mean square of what the harmonics of the fit leave of the mean cycle, its noise taken off; may come out under 0. */
    public double remainingPower() {
        double power = filled ? residuals.explainedPower(noise) : 0;
        double ofNoise = 2 * noise * noise / Math.max(1, residuals.count());
        for (int k = fit.count() + 1; k <= base.count(); k++) {
            double amplitude = base.amplitude(k);
            power += amplitude * amplitude / 2 - ofNoise;
        }
        return power;
    }

    /** Frequency of the fundamental over the sample rate. */
    public double cyclesPerSample() {
        return base.cyclesPerSample();
    }

    /**
     * Writes what the mean cycle leaves of a record, thinned by averaging; a gap counts as 0.
     *
     * @param factor samples that are averaged
     * @param length number of averages
     * @param target where they go, from its first place on
     */
    public void residuals(Samples samples, int factor, int length, double[] target) {
        FitTable fitted = table();
        for (int i = 0; i < length * factor; i++) {
            double value = samples.at(i);
            if (!Double.isNaN(value)) {
                double cycles = base.cyclesAt(i);
                double phase = FoldedResiduals.fraction(cycles - origin);
                double mean = filled ? residuals.mean(Math.min((int) (phase * bins()), bins() - 1)) : 0;
                target[i / factor] += (value - fitted.at(FoldedResiduals.fraction(cycles)) - mean) / factor;
            }
        }
    }

    private FitTable table() {
        FitTable known = table;
        if (known == null) {
            known = new FitTable(base);
            table = known;
        }
        return known;
    }

    /** The folded samples, in fine steps of phase. */
    public WeightedPoints points() {
        WeightedPoints known = points;
        if (known == null) {
            known = residuals.points(table(), origin);
            points = known;
        }
        return known;
    }
}
