package clipwitness.signal;

import java.util.Arrays;

/** Distances of a record's samples from a fit, folded on one period: sums over bins, and over fine bins within them. */
final class FoldedResiduals {
    private static final int FINE = 2048;

    private final int bins;
    private final int[] fineCount = new int[FINE];
    private final double[] finePhase = new double[FINE];
    private final double[] fineSum = new double[FINE];
    private final int[] count;
    private final double[] sum;
    private final double[] squares;
    private final double[] place;
    private final double[] placeSquares;
    private final double[] products;

    /**
     * @param origin where the cycle begins, in cycles from the middle of the record
     * @param bins   number of bins, a power of 2 up to 2048
     */
    FoldedResiduals(FitSamples series, HarmonicFit fit, FitTable table, double origin, int bins) {
        this.bins = bins;
        count = new int[bins];
        sum = new double[bins];
        squares = new double[bins];
        place = new double[bins];
        placeSquares = new double[bins];
        products = new double[bins];
        for (int i = 0; i < series.size(); i++) {
            if (!series.isGap(i)) {
                double cycles = fit.cyclesAt(i);
                add(fraction(cycles - origin), series.at(i) - table.at(fraction(cycles)));
            }
        }
    }

    /** What is beyond the last whole cycle, 0 to 1; by a cast, for the platform rounds down bit by bit where it is not compiled to the utmost. */
    static double fraction(double cycles) {
        double whole = (long) cycles;
        return cycles - (whole > cycles ? whole - 1 : whole);
    }

    private void add(double phase, double residual) {
        int fine = Math.min((int) (phase * FINE), FINE - 1);
        fineCount[fine]++;
        finePhase[fine] += phase;
        fineSum[fine] += residual;
        int bin = fine / (FINE / bins);
        double offset = phase * bins - bin - 0.5;
        count[bin]++;
        sum[bin] += residual;
        squares[bin] += residual * residual;
        place[bin] += offset;
        placeSquares[bin] += offset * offset;
        products[bin] += offset * residual;
    }

    int bins() {
        return bins;
    }

    /** Number of samples. */
    int count() {
        return Arrays.stream(count).sum();
    }

    /** Mean distance in a bin, 0 where it is empty. */
    double mean(int bin) {
        return count[bin] == 0 ? 0 : sum[bin] / count[bin];
    }

    /**
     * Mean over the bins of the squared distance that straight lines through the bins explain, the share of noise in it taken off; may
     * come out under 0.
     *
     * @param noise scatter of single samples
     */
    double explainedPower(double noise) {
        double total = 0;
        for (int b = 0; b < bins; b++) {
            if (count[b] > 0) {
                double ofNoise = (count[b] - freedom(b)) * noise * noise;
                total += (squares[b] - scatterEnergy(b) - ofNoise) / count[b];
            }
        }
        return total / bins;
    }

    /** Sum of squared distances from the fit. */
    double energy() {
        return Arrays.stream(squares).sum();
    }

    /** Sum of squared distances from a straight line through each bin. */
    double scatterEnergy() {
        double sum = 0;
        for (int b = 0; b < bins; b++) {
            sum += scatterEnergy(b);
        }
        return sum;
    }

    /** Sum of squared distances from a straight line through one bin. */
    double scatterEnergy(int bin) {
        if (count[bin] < 2) {
            return 0;
        }
        double energy = squares[bin] - sum[bin] * sum[bin] / count[bin];
        double product = products[bin] - place[bin] * sum[bin] / count[bin];
        return energy - (hasSlope(bin) ? product * product / spread(bin) : 0);
    }

    /** Median variance about the straight line of those of some bins that have degrees of freedom, 0 where none has. */
    double medianVariance(int[] some) {
        double[] variances = Arrays.stream(some)
                .filter(b -> freedom(b) > 0)
                .mapToDouble(b -> Math.max(0, scatterEnergy(b)) / freedom(b))
                .sorted()
                .toArray();
        return variances.length == 0 ? 0 : variances[variances.length / 2];
    }

    /** Degrees of freedom of {@link #scatterEnergy()}. */
    int freedom() {
        int sum = 0;
        for (int b = 0; b < bins; b++) {
            sum += freedom(b);
        }
        return sum;
    }

    /** Degrees of freedom in one bin. */
    int freedom(int bin) {
        return Math.max(0, count[bin] - 1 - (hasSlope(bin) ? 1 : 0));
    }

    private double spread(int bin) {
        return placeSquares[bin] - place[bin] * place[bin] / count[bin];
    }

    /** A slope needs samples in different places: in a record with a whole number of samples a period they do not move. */
    private boolean hasSlope(int bin) {
        return count[bin] > 2 && spread(bin) > 1e-6 * count[bin];
    }

    /** Phase in cycles and fit plus mean distance of each fine bin that has samples, ascending. */
    WeightedPoints points(FitTable table, double origin) {
        int filled = 0;
        for (int n : fineCount) {
            filled += n > 0 ? 1 : 0;
        }
        double[] phases = new double[filled];
        double[] values = new double[filled];
        double[] weights = new double[filled];
        int at = 0;
        for (int j = 0; j < FINE; j++) {
            if (fineCount[j] > 0) {
                phases[at] = finePhase[j] / fineCount[j];
                values[at] = table.at(fraction(phases[at] + origin)) + fineSum[j] / fineCount[j];
                weights[at] = fineCount[j];
                at++;
            }
        }
        return new WeightedPoints(phases, values, weights);
    }
}
